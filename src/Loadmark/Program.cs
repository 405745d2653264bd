using Loadmark.Commands;
using Loadmark.Core.Checks;
using Loadmark.Hosting;
using Loadmark.Sources;

using var interrupts = new Interrupts();
return LoadmarkCommand.Run(args, Surroundings.OfProcess(interrupts), new RigFileSource(), RigChecker.Check);
