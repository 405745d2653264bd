using Loadmark.Answers;
using Loadmark.Files.Tables;
using Loadmark.Hosting;
using Loadmark.Outputs;
using Loadmark.Sheets;
using Loadmark.Simulation.Spreading;
using Loadmark.Simulation.Starting;
using Loadmark.Sources;
using Loadmark.Workshop.Solves;

namespace Loadmark.Commands;

/// <summary><c>loadmark startup</c>: does it all come up, and stay up?</summary>
internal sealed class StartUpCommand(Surroundings around, IRigSource source)
{
    /// <summary>Reads the rig, computes its first seconds, writes the waveforms where that was asked, and answers.</summary>
    public int Run(Request.StartUp request)
    {
        var outputs = new OutputFiles(around, request.Data);
        if (request.Csv is { } wanted && outputs.Complaint(wanted, "--csv", request.Force, request.Rig) is { } complaint)
            return new Complaints(around).Unusable(complaint);
        var reading = source.Read(request.Rig);
        if (reading.Rig is not { } rig)
            return new Complaints(around).Unreadable([new CheckAnswer(request.Rig, null, reading.Errors)], request.Json);

        var interruption = around.Interruption();
        try
        {
            using var talk = new WaitNotice(around, "computing the first seconds after switch-on");
            var (circuit, started, check) = StartedRig.Of(rig, interruption);
            talk.Dispose();
            var spread = SpreadRun.Of(request.Spread, around, options => RigSpread.StartUp(circuit, options, cancellation: interruption));
            if (request.Csv is { } file && !outputs.TrySave(file, TableOf(started.Waveforms), request.Force))
                return ExitCode.Unreadable;
            if (request.Json)
                SimulationJson.Write(around.Output, started, check, spread);
            else
                SheetPrinter.Print(around, sheet => StartUpPage.Write(sheet, started, check, request.Rig, request.Csv, spread));
            if (interruption.IsCancellationRequested)
                return ExitCode.Interrupted;
            return check.IsRefused ? ExitCode.Refused : ExitCode.Fine;
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Interrupted;
        }
    }

    private static string TableOf(Waveforms waveforms)
    {
        List<string> head = ["time s", .. waveforms.Series.Select(static series => $"{series.Subject} {series.Unit}")];
        var rows = Enumerable.Range(0, waveforms.Seconds.Length)
            .Select(row => (IReadOnlyList<double>)[waveforms.Seconds[row], .. waveforms.Series.Select(series => series.Values[row])]);
        return FigureTable.Write(head, rows);
    }
}
