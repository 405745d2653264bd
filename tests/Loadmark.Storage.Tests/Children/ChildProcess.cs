using System.Diagnostics;

namespace Loadmark.Storage.Tests.Children;

/// <summary>This program, started again as a process of its own.</summary>
internal static class ChildProcess
{
    private static readonly string Program = typeof(ChildProcess).Assembly.Location;

    public static Process Start(params string[] arguments) => Start("dotnet", [Program, "child", .. arguments]);

    /// <summary>
    /// Runs it where a small disk of its own is mounted on the folder. The namespace is the child's, so that the mount needs no rights
    /// outside and goes with it.
    /// </summary>
    public static async Task<string[]> RunOnSmallDiskAsync(string folder, string size, params string[] arguments)
    {
        Directory.CreateDirectory(folder);
        const string Script = """
            mount -t tmpfs -o size="$1",mode=700 tmpfs "$2" && shift 2 && exec "$@"
            """;
        using var child = Start("unshare", ["-rm", "sh", "-c", Script, "sh", size, folder, "dotnet", Program, "child", .. arguments]);
        var said = await child.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await child.WaitForExitAsync(TestContext.Current.CancellationToken);
        return said.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static Process Start(string program, string[] arguments) =>
        Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, UseShellExecute = false })!;
}
