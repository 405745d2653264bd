using System.Text;
using Loadmark.Answers;
using Loadmark.Core.Display;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Hosting;
using Loadmark.Outputs;
using Loadmark.Planning.Explaining;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Search;
using Loadmark.Planning;
using Loadmark.Sheets;
using Loadmark.Sources;

namespace Loadmark.Commands;

/// <summary><c>loadmark plan</c>: what should feed what?</summary>
internal sealed class PlanCommand(Surroundings around, IRigSource source)
{
    /// <summary>Reads and plans the rig, writes the wiring where that was asked, and answers.</summary>
    public int Run(Request.Plan request)
    {
        var complaints = new Complaints(around);
        var outputs = new OutputFiles(around, request.Data);
        var toOutput = request.WriteTo == StandardInput.Mark;
        if (request.WriteTo is { } wanted && !toOutput && outputs.Complaint(wanted, "--write", request.Force, request.Rig) is { } hitch)
            return complaints.Unusable(hitch);
        var (reading, text) = source.ReadWithText(request.Rig, source.Library);
        if (reading.Rig is not { } rig)
            return complaints.Unreadable([new CheckAnswer(request.Rig, null, reading.Errors)], request.Json);
        if (Complaints.AboutOnly(request.Only, rig, StandardInput.NameOf(request.Rig)) is { } complaint)
            return complaints.Unusable(complaint);

        var interruption = around.Interruption();
        using var talk = new ProgressNotice<PlanProgress>(
            around,
            static at =>
                $"{at.Level} {FigureDisplay.Number(at.Value)}, not below {FigureDisplay.Number(at.Bound)}. Ctrl-C shows the best so far.");
        var options =
            new PlanOptions { Only = request.Only.Count == 0 ? null : request.Only.ToHashSet(StringComparer.Ordinal), Progress = talk };
        var plan = RigPlanner.Plan(rig, options, interruption);
        var explanation = PlanExplainer.Explain(plan, options, interruption);
        if (request.WriteTo is { } file)
        {
            if (TextOf(text!, plan.Rig.Wired ?? [], out var trouble) is not { } planned)
                return complaints.Unusable($"the plan cannot be written into the text of {StandardInput.NameOf(request.Rig)}: {trouble}");
            if (toOutput)
                WriteOut(planned, plan.Unfed);
            else if (!outputs.TrySave(file, planned, request.Force))
                return ExitCode.Unreadable;
        }

        if (toOutput)
            return CodeOf(plan, interruption);
        if (request.Json)
            PlanJson.Write(around.Output, plan, explanation);
        else
            SheetPrinter.Print(around, sheet => PlanPage.Write(sheet, rig, plan, explanation, request.WriteTo));
        return CodeOf(plan, interruption);
    }

    private static int CodeOf(PlanResult plan, CancellationToken interruption) =>
        interruption.IsCancellationRequested ? ExitCode.Interrupted : plan.Unfed.Count == 0 ? ExitCode.Fine : ExitCode.Refused;

    /// <summary>Writes the rig in the place of the answer, and says aside what is not fed.</summary>
    private void WriteOut(string planned, ValueList<string> unfed)
    {
        around.Output.Write(Encoding.UTF8.GetBytes(planned));
        around.Output.Flush();
        if (unfed.Count > 0)
            around.Error.WriteLine($"loadmark: not fed: {TerminalText.Neutral(string.Join(", ", unfed.Items))}.");
    }

    /// <summary>The text of the rig with the wiring put into it, comments kept; null, with the reason, where that cannot be done.</summary>
    private string? TextOf(string text, ValueList<Feed> wired, out string? trouble)
    {
        try
        {
            trouble = null;
            return RigFileEditor.ReplaceWiring(text, wired, source.Library);
        }
        catch (InvalidOperationException fault)
        {
            trouble = fault.Message;
            return null;
        }
    }
}
