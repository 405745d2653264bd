using Loadmark.Commands;
using Loadmark.Hosting;
using Loadmark.Simulation.Checks;
using Loadmark.Sources;

// The YAML library asks for compiled regular expressions; compiling one costs a command more than all its use there. The page's
// libraries need code made while it runs, and stay long enough for it to pay.
// So does the database: for gear and rigs that are kept, and for rig files that take gear from the library.
if (args is [not ['-', ..] and not ("gear" or "rigs"), ..] && !LibraryMention.IsIn(args))
    AppContext.SetSwitch("System.Runtime.CompilerServices.RuntimeFeature.IsDynamicCodeSupported", false);

using var interrupts = new Interrupts();
return LoadmarkCommand.Run(args, Surroundings.OfProcess(interrupts), new RigFileSource(Environment.GetEnvironmentVariable, null), static (rig, startUp) => RigExamination.Check(rig, new ExaminationOptions { StartUp = startUp }));
