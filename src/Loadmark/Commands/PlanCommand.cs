using System.Globalization;
using Loadmark.Answers;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Hosting;
using Loadmark.Planning;
using Loadmark.Planning.Explaining;
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
        var (reading, text) = source.ReadWithText(request.Rig, source.Library);
        if (reading.Rig is not { } rig)
            return complaints.Unreadable([new CheckAnswer(request.Rig, null, reading.Errors)], request.Json);
        if (Complaints.AboutOnly(request.Only, rig, StandardInput.NameOf(request.Rig)) is { } complaint)
            return complaints.Unusable(complaint);

        var interruption = around.Interruption();
        using var talk = new ProgressTalk<PlanProgress>(
            around,
            static at => string.Create(CultureInfo.InvariantCulture, $"{at.Level} {at.Value:0.###}, not below {at.Bound:0.###}. Ctrl-C shows the best so far."));
        var options = new PlanOptions { Only = request.Only.Count == 0 ? null : request.Only.ToHashSet(StringComparer.Ordinal), Progress = talk };
        var plan = RigPlanner.Plan(rig, options, interruption);
        var explanation = PlanExplainer.Explain(plan, options, interruption);
        if (request.WriteTo is { } file && !TryWrite(text!, file, plan.Rig.Wired ?? []))
            return ExitCode.Unreadable;

        if (request.Json)
            PlanJson.Write(around.Output, plan, explanation);
        else
            SheetPrinter.Print(around, sheet => PlanPage.Write(sheet, rig, plan, explanation, request.WriteTo));
        if (interruption.IsCancellationRequested)
            return ExitCode.Interrupted;
        return plan.Unfed.Count == 0 ? ExitCode.Fine : ExitCode.Refused;
    }

    /// <summary>Puts the wiring into the text of the rig, comments kept, and saves that.</summary>
    private bool TryWrite(string text, string to, ValueList<Feed> wired)
    {
        try
        {
            RigFile.Save(to, RigFileEditor.ReplaceWiring(text, wired, source.Library));
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or InvalidOperationException)
        {
            around.Error.WriteLine($"loadmark: {SafeText.Neutral(to)} could not be written: {SafeText.Neutral(fault.Message)}");
            return false;
        }
    }
}
