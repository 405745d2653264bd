using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Simulation;
using Loadmark.Simulation.Spreading;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Commands;

/// <summary><c>loadmark settle</c>: what voltage does each load really get?</summary>
internal sealed class SettleCommand(CommandInput input)
{
    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = QuestionSpecs.Settle.Text,
        Parameters = [RigParameter.Wired],
        Options = QuestionSpecs.Settle.Options,
        Needs = "the path of one rig file",
        Json = "One object: loads, outlets, findings, what was assumed.",
        Example = "loadmark settle examples/pit.rig.yaml",
        AnswersAtOnce = true,
        Run = static input => new SettleCommand(input).Run(),
    };

    /// <summary>Reads the rig, computes its steady state, and answers.</summary>
    private int Run()
    {
        if (Sampling.Read(input.Text(QuestionSpecs.Spread), input.Text(QuestionSpecs.Seed), out var unusable) is var sampling
            && unusable is not null)
            return input.Refuse(unusable);
        if (input.Words is not [var path])
            return input.Refuse();
        var process = input.Process;
        var reading = input.Rigs.Read(path);
        if (reading.Rig is not { } rig)
            return input.Complaints.Unreadable([new CheckAnswer(path, null, reading.Errors)], input.Json);

        var interruption = process.Interruption();
        using var talk = new WaitNotice(process, "computing what each load gets");
        var (circuit, settled, check) = RigAnalysis.Settle(rig, interruption);
        talk.Dispose();
        var spread = SpreadRun.Of(sampling, process, options => RigSpread.Settle(circuit, options, interruption));
        if (input.Json)
            SimulationJson.Write(process.Output, settled, check, spread);
        else
            SheetPrinter.Print(process, sheet => SettlePage.Write(sheet, settled, check, path, spread));
        if (interruption.IsCancellationRequested)
            return ExitCode.Interrupted;
        return check.IsRefused ? ExitCode.Refused : ExitCode.Fine;
    }
}
