using Loadmark.Commands;
using Loadmark.Processes;
using Loadmark.Simulation;
using Loadmark.Sources;

// The YAML library asks for compiled regular expressions; compiling one costs a command that answers at once more than all its use
// there. All else needs code made while it runs: the page's libraries, and the database of what is kept, also for a rig file that takes
// gear from the library.
if (args is [var name, ..] && ProgramCommands.Program.Below(name) is { AnswersAtOnce: true } && !LibraryMention.IsIn(args))
    AppContext.SetSwitch("System.Runtime.CompilerServices.RuntimeFeature.IsDynamicCodeSupported", false);

using var interrupts = new Interrupts();
var process = ProcessContext.OfProcess(interrupts);
return LoadmarkCommand.Run(
    args,
    process,
    new RigFileSource(process, null),
    static (rig, startUp) => RigAnalysis.Of(rig, startUp ? AnalysisDepth.WholeVerdict : AnalysisDepth.Verdict).Check);
