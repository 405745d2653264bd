using Loadmark.Browser.Tests.House;

// One browser for all, one program for all that may share it, and one test at a time: the machine is small, and speed is measured.
[assembly: AssemblyFixture(typeof(SharedBrowser))]
[assembly: AssemblyFixture(typeof(ServedPage))]
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.None)]
