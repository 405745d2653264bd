using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Workshop.Asking;

namespace Loadmark.Commands;

/// <summary><c>loadmark ask</c>: may I plug this in?</summary>
internal sealed class AskCommand(CommandInput input)
{
    private static readonly OptionSpec From = new(
        "from", OptionKind.Texts, "What it would be plugged into: what the adaptor or the supply says; may be given several times.")
    { Placeholder = "SUPPLY", Needs = "what the adaptor says" };

    /// <summary>The command.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = QuestionSpecs.Ask.Text,
        Parameters =
        [
            new("LOAD", "What a pedal says, in quotes; a name may stand before it: \"tuner: 9V 30mA\". Several are plugged in together.")
            {
                IsRepeated = true,
            },
        ],
        Options = [From, .. QuestionSpecs.Ask.Options],
        Needs = "what the pedal says, such as \"9V DC 300mA centre negative\"",
        Json = "One object: answer, because, ifs, checks, leftAmps, fits, next, rig.",
        Note = "Exit code 1 means no, or find out first.",
        Example = "loadmark ask \"9V DC 300mA centre negative\" --from \"9V 2A ctr neg\"",
        Documentation = "docs/asking.md",
        AnswersAtOnce = true,
        Run = static input => new AskCommand(input).Run(),
    };

    /// <summary>Reads what the things say, judges, and answers.</summary>
    private int Run()
    {
        if (input.Words.Count == 0)
            return input.Refuse();
        var question = new PlugInQuestion
        {
            Loads = input.Words,
            Supplies = input.Texts(From),
            IsChain = input.Has(QuestionSpecs.Chain),
            Mains = input.Text(QuestionSpecs.Mains),
        };
        if (AskedRig.Of(question, out var complaint) is not { } asked)
            return input.Complaints.Unusable(complaint);
        var answer = PlugInAdvisor.Answer(asked, input.Process.Interruption());
        if (input.Json)
            AskJson.Write(input.Process.Output, answer);
        else
            SheetPrinter.Print(input.Process, sheet => AskPage.Write(sheet, answer));
        return answer.Verdict is PlugInVerdict.Yes or PlugInVerdict.YesIf ? ExitCode.Fine : ExitCode.Refused;
    }
}
