using Loadmark.Commands;
using Loadmark.Hosting;
using Loadmark.Simulation.Checks;
using Loadmark.Sources;

using var interrupts = new Interrupts();
return LoadmarkCommand.Run(args, Surroundings.OfProcess(interrupts), new RigFileSource(), static (rig, startUp) => RigExamination.Check(rig, new ExaminationOptions { StartUp = startUp }));
