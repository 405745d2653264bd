using Loadmark.Browser.Tests.House;

// One browser for all, and one test at a time: the machine is small, and speed is measured.
[assembly: AssemblyFixture(typeof(SharedBrowser))]
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.None)]
