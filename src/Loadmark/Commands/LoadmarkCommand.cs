using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Hosting;
using Loadmark.Sheets;
using Loadmark.Sources;

namespace Loadmark.Commands;

/// <summary>The program: reads the command line, runs the command, and turns whatever happens into an exit code.</summary>
internal static class LoadmarkCommand
{
    /// <summary>Runs the program.</summary>
    /// <param name="args">What was typed after the program's name.</param>
    /// <param name="around">Streams and terminal.</param>
    /// <param name="rigs">Where rigs are read from.</param>
    /// <param name="check">What checks a rig; the second argument is whether the first seconds are computed in any case.</param>
    /// <returns>An <see cref="ExitCode"/>.</returns>
    public static int Run(IReadOnlyList<string> args, Surroundings around, IRigSource rigs, Func<Rig, bool, CheckResult> check)
    {
        try
        {
            return Answer(new CommandLine().Parse(args), around, rigs, check);
        }
        catch (IOException fault)
        {
            around.Error.WriteLine($"loadmark: the answer could not be written: {TerminalText.Neutral(fault.Message)}");
            return ExitCode.Fault;
        }
        catch (Exception fault) // the one place where a fault of the program ends, whatever it is
        {
            around.Error.WriteLine("loadmark: a fault in the program kept it from answering; nothing here says anything about the rig.");
            around.Error.WriteLine(
                around.Debug ? fault.ToString() : "Run it again with LOADMARK_DEBUG=1 in the environment to see the details.");
            return ExitCode.Fault;
        }
    }

    private static int Answer(Request request, Surroundings around, IRigSource source, Func<Rig, bool, CheckResult> check)
    {
        var rigs = source.KeptIn(request.Data);
        switch (request)
        {
            case Request.Page asked:
                return new PageCommand(around).Run(asked);
            case Request.Check asked:
                return new CheckCommand(around, rigs, check).Run(asked);
            case Request.Plan asked:
                return new PlanCommand(around, rigs).Run(asked);
            case Request.Buy asked:
                return new BuyCommand(around, rigs).Run(asked);
            case Request.Settle asked:
                return new SettleCommand(around, rigs).Run(asked);
            case Request.StartUp asked:
                return new StartUpCommand(around, rigs).Run(asked);
            case Request.Netlist asked:
                return new NetlistCommand(around, rigs).Run(asked);
            case Request.GearList asked:
                return new GearReadCommand(around).Run(asked);
            case Request.GearShow asked:
                return new GearReadCommand(around).Run(asked);
            case Request.GearAdd asked:
                return new GearAddCommand(around, rigs).Run(asked);
            case Request.GearMeasure asked:
                return new GearMeasureCommand(around).Run(asked);
            case Request.GearImport asked:
                return new GearFileCommand(around).Run(asked);
            case Request.GearExport asked:
                return new GearFileCommand(around).Run(asked);
            case Request.RigsList asked:
                return new RigsCommand(around, rigs).Run(asked);
            case Request.RigsImport asked:
                return new RigsCommand(around, rigs).Run(asked);
            case Request.RigsExport asked:
                return new RigsCommand(around, rigs).Run(asked);
            case Request.RigsAffected asked:
                return new AffectedCommand(around).Run(asked);
            case Request.Read asked:
                return new ReadCommand(around).Run(asked);
            case Request.Backup asked:
                return new BackupCommand(around).Run(asked);
            case Request.Restore asked:
                return new BackupCommand(around).Run(asked);
            case Request.Wrong wrong:
                around.Error.WriteLine($"loadmark: {TerminalText.Neutral(wrong.Complaint)}");
                around.Error.WriteLine(wrong.Topic == Topic.Program ? "See loadmark --help." : $"See loadmark {Name(wrong.Topic)} --help.");
                return ExitCode.Unreadable;
            case Request.Version:
                SheetPrinter.Print(
                    around, static sheet => HelpPage.WriteVersion(sheet, typeof(LoadmarkCommand).Assembly.GetName().Version));
                return ExitCode.Fine;
            case Request.Help help:
                SheetPrinter.Print(around, sheet => HelpPage.Write(sheet, help.Topic));
                return ExitCode.Fine;
            default:
                throw new InvalidOperationException($"No command answers {request.GetType().Name}.");
        }
    }

    private static string Name(Topic topic) => topic.ToString().ToLowerInvariant();
}
