using Loadmark.CommandLines;
using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Processes;
using Loadmark.Storage.Faults;
using Loadmark.Sources;

namespace Loadmark.Commands;

/// <summary>The program: reads the command line, runs the command, and turns whatever happens into an exit code.</summary>
internal static class LoadmarkCommand
{
    /// <summary>Runs the program.</summary>
    /// <param name="args">What was typed after the program's name.</param>
    /// <param name="process">Streams and terminal.</param>
    /// <param name="rigs">Where rigs are read from.</param>
    /// <param name="check">What checks a rig; the second argument is whether the first seconds are computed in any case.</param>
    /// <returns>An <see cref="ExitCode"/>.</returns>
    public static int Run(IReadOnlyList<string> args, ProcessContext process, IRigSource rigs, Func<Rig, bool, CheckResult> check)
    {
        if (process.Trouble is { } trouble)
        {
            process.Error.WriteLine($"loadmark: {TerminalText.Neutral(trouble.Sentence)}.");
            return trouble.Code;
        }

        try
        {
            return new CommandParser(ProgramCommands.Program).Run(args, process, rigs, check);
        }
        catch (OperationCanceledException) when (process.Interruption().IsCancellationRequested)
        {
            return ExitCode.Interrupted;
        }
        catch (StorageException fault)
        {
            return new Complaints(process).Unusable(fault.Message);
        }
        catch (UnwrittenAnswerException fault)
        {
            process.Error.WriteLine($"loadmark: the answer could not be written: {TerminalText.Neutral(fault.Message)}");
            return ExitCode.Fault;
        }
        catch (Exception fault) // the one place where a fault of the program ends, whatever it is
        {
            process.Error.WriteLine("loadmark: a fault in the program kept it from answering; nothing here says anything about the rig.");
            process.Error.WriteLine(
                process.Debug ? fault.ToString() : "Run it again with LOADMARK_DEBUG=1 in the environment to see the details.");
            return ExitCode.Fault;
        }
    }
}
