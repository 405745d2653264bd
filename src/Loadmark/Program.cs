using System.Runtime.InteropServices;
using Loadmark.Commands;
using Loadmark.Core.Checks;
using Loadmark.Hosting;
using Loadmark.Sources;

using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, static _ => Environment.Exit(ExitCode.Interrupted));
return LoadmarkCommand.Run(args, Surroundings.OfProcess(), new RigFileSource(), RigChecker.Check);
