using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Core.OpenQuestions;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Sources;

namespace Loadmark.Commands;

/// <summary><c>loadmark check</c>: as wired, is it safe, does it run, what is left?</summary>
internal sealed class CheckCommand(CommandInput input)
{
    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = QuestionSpecs.Check.Text,
        Parameters =
        [
            new("RIG", "A rig file, or - for one on standard input. Several give each its verdict and a summary, worst first.")
            {
                IsRepeated = true,
            },
        ],
        Options = QuestionSpecs.Check.Options,
        Needs = "the path of a rig file, or - for one on standard input",
        Json = "One object for one rig, an array for several, in the order given.",
        TellsVerdicts = true,
        Example = "loadmark check examples/pit.rig.yaml",
        Documentation = "docs/rules/README.md",
        AnswersAtOnce = true,
        Run = static input => new CheckCommand(input).Run(),
    };

    /// <summary>Reads and checks the rigs, all of them whatever happens to one, and writes the answer.</summary>
    private int Run()
    {
        if (StandardInput.IsNamedTwice(input.Words))
            return input.Refuse(StandardInput.OnceOnly);
        if (input.Words.Count == 0)
            return input.Refuse();
        var answers = CheckAll(input.Words);
        input.Complaints.Tell(answers);
        if (input.Json)
            CheckJson.Write(input.Process.Output, answers);
        else
            Print(answers);

        return CodeOf(answers);
    }

    private static int CodeOf(CheckAnswer[] answers)
    {
        var code = ExitCode.Fine;
        foreach (var answer in answers)
        {
            if (answer.Result is null)
                return ExitCode.Unreadable;
            if (answer.Result.IsRefused)
                code = ExitCode.Refused;
        }

        return code;
    }

    private void Print(CheckAnswer[] answers) => SheetPrinter.Print(input.Process, sheet =>
    {
        if (answers.Length > 1)
            ManyRigsPage.Write(sheet, answers);
        else if (answers[0].Result is not null)
            OneRigPage.Write(sheet, answers[0]);
    });

    private CheckAnswer[] CheckAll(IReadOnlyList<string> paths)
    {
        var answers = new CheckAnswer[paths.Count];
        if (paths.Count == 1)
            answers[0] = CheckOne(paths[0]);
        else
            Parallel.For(0, paths.Count, index => answers[index] = CheckOne(paths[index]));
        return answers;
    }

    private CheckAnswer CheckOne(string path)
    {
        var reading = input.Rigs.Read(path);
        if (reading.Rig is not { } rig)
            return new CheckAnswer(path, null, reading.Errors);
        var answer = new CheckAnswer(path, input.Check(rig, input.Has(QuestionSpecs.AlsoStartUp)), []);

        // The page on several rigs has no place for questions.
        if (!input.Json && input.Words.Count != 1)
            return answer;
        var asked = QuestionSearch.Search(rig);
        return answer with { Result = asked.Tell(answer.Result!), Questions = asked.Questions };
    }
}
