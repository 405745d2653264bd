using System.Text;
using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Core.Display;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Processes;
using Loadmark.Outputs;
using Loadmark.Planning.Explaining;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Search;
using Loadmark.Planning;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Sources;

namespace Loadmark.Commands;

/// <summary><c>loadmark plan</c>: what should feed what?</summary>
internal sealed class PlanCommand(CommandInput input)
{
    private static readonly OptionSpec Write = new(
        "write",
        OptionKind.Text,
        "Write the rig with the planned wiring to this file, comments kept; with - to standard output instead of the answer.")
    { Placeholder = "FILE", Needs = "the name of a file", With = CommonOptions.Force };

    private readonly ProcessContext _process = input.Process;

    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = QuestionSpecs.Plan.Text,
        Parameters =
        [
            new("RIG", "A rig file, or - for one on standard input. Its own wiring does not bind, except feeds with 'pinned: true'."),
        ],
        Options = [.. QuestionSpecs.Plan.Options, Write],
        Needs = "the path of one rig file",
        Json = "One object: status, feeds, what is not fed and why, what would mend it.",
        Example = "loadmark plan examples/pit.rig.yaml",
        AnswersAtOnce = true,
        Run = static input => new PlanCommand(input).Run(),
    };

    /// <summary>Reads and plans the rig, writes the wiring where that was asked, and answers.</summary>
    private int Run()
    {
        var (complaints, writeTo, force) = (input.Complaints, input.Text(Write), input.Has(CommonOptions.Force));
        var outputs = new OutputFiles(_process, input.Data);
        var toOutput = writeTo == StandardInput.Mark;
        if (toOutput && input.Json)
            return input.Refuse("--write - writes the rig to standard output, where the answer in JSON goes too. Use one of them.");
        if (input.Words is not [var path])
            return input.Refuse();
        if (writeTo is { } wanted && !toOutput && outputs.Complaint(wanted, Write.Typed, force, path) is { } hitch)
            return complaints.Unusable(hitch);
        var (reading, text) = input.Rigs.ReadWithText(path, input.Rigs.Library);
        if (reading.Rig is not { } rig)
            return complaints.Unreadable([new CheckAnswer(path, null, reading.Errors)], input.Json);
        var only = input.Names(QuestionSpecs.Only);
        if (Complaints.AboutOnly(only, rig, StandardInput.NameOf(path)) is { } complaint)
            return complaints.Unusable(complaint);

        var interruption = _process.Interruption();
        using var talk = new ProgressNotice<PlanProgress>(
            _process,
            static at =>
                $"{at.Level} {FigureDisplay.Number(at.Value)}, not below {FigureDisplay.Number(at.Bound)}. Ctrl-C shows the best so far.");
        var options =
            new PlanOptions
            {
                Only = only.Count == 0 ? null : only.ToHashSet(StringComparer.Ordinal),
                FewestMoves = input.Has(QuestionSpecs.FewestMoves),
                AcrossBoards = input.Has(QuestionSpecs.AcrossBoards),
                Progress = talk,
            };
        var plan = RigPlanner.Plan(rig, options, interruption);
        var explanation = PlanExplainer.Explain(plan, options, interruption);
        if (writeTo is { } file)
        {
            if (TextOf(text!, plan.Rig.Wired ?? [], out var trouble) is not { } planned)
                return complaints.Unusable($"the plan cannot be written into the text of {StandardInput.NameOf(path)}: {trouble}");
            if (toOutput)
                WriteOut(planned, plan.Unfed);
            else if (!outputs.TrySave(file, planned, force))
                return ExitCode.Unreadable;
        }

        if (toOutput)
            return CodeOf(plan, interruption);
        if (input.Json)
            PlanJson.Write(_process.Output, rig, plan, explanation);
        else
            SheetPrinter.Print(_process, sheet => PlanPage.Write(sheet, rig, plan, explanation, writeTo));
        return CodeOf(plan, interruption);
    }

    private static int CodeOf(PlanResult plan, CancellationToken interruption) =>
        interruption.IsCancellationRequested ? ExitCode.Interrupted : plan.Unfed.Count == 0 ? ExitCode.Fine : ExitCode.Refused;

    /// <summary>Writes the rig in the place of the answer, and says aside what is not fed.</summary>
    private void WriteOut(string planned, ValueList<string> unfed)
    {
        _process.Output.Write(Encoding.UTF8.GetBytes(planned));
        _process.Output.Flush();
        if (unfed.Count > 0)
            _process.Error.WriteLine($"loadmark: not fed: {TerminalText.Neutral(string.Join(", ", unfed.Items))}.");
    }

    /// <summary>The text of the rig with the wiring put into it, comments kept; null, with the reason, where that cannot be done.</summary>
    private string? TextOf(string text, ValueList<Feed> wired, out string? trouble)
    {
        try
        {
            trouble = null;
            return RigFileEditor.ReplaceWiring(text, wired, input.Rigs.Library);
        }
        catch (InvalidOperationException fault)
        {
            trouble = fault.Message;
            return null;
        }
    }
}
