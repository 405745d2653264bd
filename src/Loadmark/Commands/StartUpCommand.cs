using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Files.Tables;
using Loadmark.Processes;
using Loadmark.Outputs;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Simulation;
using Loadmark.Simulation.Spreading;
using Loadmark.Simulation.Starting;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Commands;

/// <summary><c>loadmark startup</c>: does it all come up, and stay up?</summary>
internal sealed class StartUpCommand(CommandInput input)
{
    private static readonly OptionSpec Csv = new(
        "csv", OptionKind.Text, "Write the waveforms to this file: volts and amps, evenly spaced, and before and after each jump.")
    { Placeholder = "FILE", Needs = "the name of a file", With = CommonOptions.Force };

    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = QuestionSpecs.StartUp.Text,
        Parameters = [RigParameter.Wired],
        Options = [Csv, .. QuestionSpecs.StartUp.Options],
        Needs = "the path of one rig file",
        Json = "One object: loads, outlets, what happened, findings, what was assumed.",
        Example = "loadmark startup examples/chain-start.rig.yaml",
        AnswersAtOnce = true,
        Run = static input => new StartUpCommand(input).Run(),
    };

    /// <summary>Reads the rig, computes its first seconds, writes the waveforms where that was asked, and answers.</summary>
    private int Run()
    {
        if (Sampling.Read(input.Text(QuestionSpecs.Spread), input.Text(QuestionSpecs.Seed), out var unusable) is var sampling
            && unusable is not null)
            return input.Refuse(unusable);
        if (input.Words is not [var path])
            return input.Refuse();
        var (process, force) = (input.Process, input.Has(CommonOptions.Force));
        var outputs = new OutputFiles(process, input.Data);
        if (input.Text(Csv) is { } wanted && outputs.Complaint(wanted, Csv.Typed, force, path) is { } complaint)
            return input.Complaints.Unusable(complaint);
        var reading = input.Rigs.Read(path);
        if (reading.Rig is not { } rig)
            return input.Complaints.Unreadable([new CheckAnswer(path, null, reading.Errors)], input.Json);

        var interruption = process.Interruption();
        using var talk = new WaitNotice(process, "computing the first seconds after switch-on");
        var (circuit, started, check) = RigAnalysis.StartUp(rig, interruption);
        talk.Dispose();
        var spread = SpreadRun.Of(sampling, process, options => RigSpread.StartUp(circuit, options, cancellation: interruption));
        if (input.Text(Csv) is { } file && !outputs.TrySave(file, TableOf(started.Waveforms), force))
            return ExitCode.Unreadable;
        if (input.Json)
            SimulationJson.Write(process.Output, started, check, spread);
        else
            SheetPrinter.Print(process, sheet => StartUpPage.Write(sheet, started, check, path, input.Text(Csv), spread));
        if (interruption.IsCancellationRequested)
            return ExitCode.Interrupted;
        return check.IsRefused ? ExitCode.Refused : ExitCode.Fine;
    }

    private static string TableOf(Waveforms waveforms)
    {
        List<string> head = ["time s", .. waveforms.Series.Select(static series => $"{series.Subject} {series.Unit}")];
        var rows = Enumerable.Range(0, waveforms.Seconds.Length)
            .Select(row => (IReadOnlyList<double>)[waveforms.Seconds[row], .. waveforms.Series.Select(series => series.Values[row])]);
        return NumberTable.Write(head, rows);
    }
}
