using Loadmark.Answers;
using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Hosting;
using Loadmark.Sheets;
using Loadmark.Sources;

namespace Loadmark.Commands;

/// <summary><c>loadmark check</c>: as wired, is it safe, does it run, what is left?</summary>
internal sealed class CheckCommand(Surroundings around, IRigSource source, Func<Rig, bool, CheckResult> check)
{
    /// <summary>Reads and checks the rigs, all of them whatever happens to one, and writes the answer.</summary>
    public int Run(Request.Check request)
    {
        var answers = CheckAll(request.Rigs, request.AlsoStartUp);
        new Complaints(around).Tell(answers);
        if (request.Json)
            CheckJson.Write(around.Output, answers);
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

    private void Print(CheckAnswer[] answers) => SheetPrinter.Print(around, sheet =>
    {
        if (answers.Length > 1)
            ManyRigsPage.Write(sheet, answers);
        else if (answers[0].Result is { } result)
            OneRigPage.Write(sheet, result);
    });

    private CheckAnswer[] CheckAll(IReadOnlyList<string> paths, bool startUp)
    {
        var answers = new CheckAnswer[paths.Count];
        if (paths.Count == 1)
            answers[0] = CheckOne(paths[0], startUp);
        else
            Parallel.For(0, paths.Count, index => answers[index] = CheckOne(paths[index], startUp));
        return answers;
    }

    private CheckAnswer CheckOne(string path, bool startUp)
    {
        var input = source.Read(path);
        return input.Rig is { } rig ? new CheckAnswer(path, check(rig, startUp), []) : new CheckAnswer(path, null, input.Errors);
    }
}
