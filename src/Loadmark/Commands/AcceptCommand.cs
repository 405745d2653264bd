using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Core.Acceptance;
using Loadmark.Files.Readings;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Workshop.Accepting;

namespace Loadmark.Commands;

/// <summary><c>loadmark accept</c>: was it built as drawn?</summary>
internal sealed class AcceptCommand(CommandInput input)
{
    private static readonly OptionSpec Readings = new(
        "readings", OptionKind.Text, "What was measured: a table or typed lines (docs/acceptance.md). Without it, what is to be measured.")
    { Placeholder = "FILE", Needs = "the name of a file" };

    private static readonly OptionSpec Blank = new(
        "blank", OptionKind.Flag, "Write a form to fill in with what is measured, with a line for each plug, and nothing else.");

    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = QuestionSpecs.Accept.Text,
        Parameters = [RigParameter.Wired],
        Options = [Readings, Blank],
        Needs = "the path of one rig file",
        Json = "One object: verdict, because, points with what is expected, read and judged.",
        Note = "Exit code 1 means refused, or not proven yet.",
        Example = "loadmark accept examples/pit.rig.yaml --readings examples/pit.readings.csv",
        Documentation = "docs/acceptance.md",
        AnswersAtOnce = true,
        Run = static input => new AcceptCommand(input).Run(),
    };

    /// <summary>Reads the rig and what was measured on it, judges, and answers.</summary>
    private int Run()
    {
        if (input.Words is not [var path])
            return input.Refuse();
        if (input.Has(Blank) && (input.Has(Readings) || input.Json))
            return input.Refuse($"{Blank.Typed} writes a form to fill in; it stands alone.");
        var reading = input.Rigs.Read(path);
        if (reading.Rig is not { } rig)
            return input.Complaints.Unreadable([new CheckAnswer(path, null, reading.Errors)], input.Json);

        var plan = AcceptancePlan.Of(rig, input.Process.Interruption());
        if (input.Has(Blank))
        {
            using var form = new StreamWriter(input.Process.Output, leaveOpen: true);
            form.Write(ReadingsWriter.Write(
                new BenchSession { RigVersion = plan.Version }, plan.Points.Items.Select(static point => point.Plug)));
            return ExitCode.Fine;
        }

        var session = new BenchSession();
        if (input.Text(Readings) is { } file)
        {
            using var wait = InputWait.ForFile(input.Process, file);
            var measured = ReadingsReader.ReadFile(file, plan.Plugs, input.Process.Patience);
            if (measured.Session is not { } read)
                return input.Complaints.Unreadable([new CheckAnswer(file, null, measured.Errors)], input.Json);
            session = read;
        }

        var result = AcceptanceJudge.Judge(plan, session);
        if (input.Json)
            AcceptJson.Write(input.Process.Output, result);
        else
            SheetPrinter.Print(input.Process, sheet => AcceptPage.Write(sheet, result));
        return result.Verdict == AcceptanceVerdict.Accepted ? ExitCode.Fine : ExitCode.Refused;
    }
}
