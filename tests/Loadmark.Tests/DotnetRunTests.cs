using System.Diagnostics;
using System.Reflection;
using Loadmark.Processes;

namespace Loadmark.Tests;

/// <summary><c>dotnet run</c> from a clone: a file is looked for where the command is typed.</summary>
public sealed class DotnetRunTests
{
    private static string Configuration { get; } = typeof(DotnetRunTests).Assembly.GetCustomAttribute<AssemblyConfigurationAttribute>()!.Configuration;

    [Theory]
    [InlineData("", "src/Loadmark", "examples/pit.rig.yaml")]
    [InlineData("examples", "../src/Loadmark", "pit.rig.yaml")]
    public async Task A_file_is_found_from_the_folder_that_it_is_run_in(string folder, string project, string file)
    {
        var stop = TestContext.Current.CancellationToken;
        var start = new ProcessStartInfo("dotnet", ["run", "--no-build", "--configuration", Configuration, "--project", project, "--", "check", file])
        {
            WorkingDirectory = Repository.PathOf(folder),
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        process.StandardInput.Close();
        var error = process.StandardError.ReadToEndAsync(stop);
        var output = await process.StandardOutput.ReadToEndAsync(stop);
        await process.WaitForExitAsync(stop);
        Assert.Equal("", await error);
        Assert.Contains("Pit board, bass chair", output, StringComparison.Ordinal);
        Assert.NotEqual(ExitCode.Unreadable, process.ExitCode);
    }
}
