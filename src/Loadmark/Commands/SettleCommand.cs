using Loadmark.Answers;
using Loadmark.Hosting;
using Loadmark.Sheets;
using Loadmark.Simulation.Spreading;
using Loadmark.Sources;
using Loadmark.Workshop.Solves;

namespace Loadmark.Commands;

/// <summary><c>loadmark settle</c>: what voltage does each load really get?</summary>
internal sealed class SettleCommand(Surroundings around, IRigSource source)
{
    /// <summary>Reads the rig, computes its steady state, and answers.</summary>
    public int Run(Request.Settle request)
    {
        var reading = source.Read(request.Rig);
        if (reading.Rig is not { } rig)
            return new Complaints(around).Unreadable([new CheckAnswer(request.Rig, null, reading.Errors)], request.Json);

        var interruption = around.Interruption();
        try
        {
            using var talk = new WaitNotice(around, "computing what each load gets");
            var (circuit, settled, check) = SettledRig.Of(rig, interruption);
            talk.Dispose();
            var spread = SpreadRun.Of(request.Spread, around, options => RigSpread.Settle(circuit, options, interruption));
            if (request.Json)
                SimulationJson.Write(around.Output, settled, check, spread);
            else
                SheetPrinter.Print(around, sheet => SettlePage.Write(sheet, settled, check, request.Rig, spread));
            if (interruption.IsCancellationRequested)
                return ExitCode.Interrupted;
            return check.IsRefused ? ExitCode.Refused : ExitCode.Fine;
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Interrupted;
        }
    }
}
