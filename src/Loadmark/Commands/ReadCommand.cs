using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Core.Nameplates;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Sources;
using Loadmark.Terminal;

namespace Loadmark.Commands;

/// <summary><c>loadmark read</c>: what does this nameplate say?</summary>
internal sealed class ReadCommand(CommandInput input)
{
    private readonly ProcessContext _process = input.Process;

    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = QuestionSpecs.Read.Text,
        Parameters =
        [
            new(
                "TEXT",
                "What is printed, best in quotes; words without quotes are one label. - reads standard input, a label a line. "
                + "After -- a text may begin with a dash."),
        ],
        Needs = "the text of a nameplate, or - to read lines from standard input",
        Json = "One object a line for each text.",
        Example = "loadmark read \"9V DC 300mA centre negative\"",
        Documentation = "docs/nameplates.md",
        AnswersAtOnce = true,
        Run = static input => new ReadCommand(input).Run(),
    };

    /// <summary>Reads the texts and writes what they say.</summary>
    private int Run()
    {
        if (input.Words.Count == 0)
            return input.Refuse();

        // Quotes are easily forgotten, so words in a row are one label; several labels come over standard input.
        var texts = new List<string>();
        if (input.Words is [StandardInput.Mark])
        {
            if (StandardInputLabels.Read(_process, texts) is { } complaint)
                return input.Complaints.Unusable(complaint);
        }
        else
        {
            texts.Add(string.Join(' ', input.Words));
        }

        if (texts.Count == 0)
        {
            _process.Error.WriteLine("loadmark: standard input has no line with text in it.");
            return ExitCode.Unreadable;
        }

        if (input.Json)
            NameplateJson.Write(_process.Output, texts);
        else
            Print(texts);
        return ExitCode.Fine;
    }

    private void Print(List<string> texts) => SheetPrinter.Print(_process, sheet =>
    {
        for (var index = 0; index < texts.Count; index++)
        {
            if (index > 0)
                sheet.BlankLine();
            NameplatePage.Write(sheet, NameplateReader.Read(texts[index]));
        }
    });
}
