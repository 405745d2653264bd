using System.Diagnostics;

namespace Loadmark.Workshop.Tests.Sheets;

/// <summary>Runs a program of Debian that reads PDF: poppler's or qpdf.</summary>
internal static class PdfTool
{
    /// <summary>What a program says; it has to end well.</summary>
    public static string Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var argument in arguments)
            start.ArgumentList.Add(argument);
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} does not start.");
        var complaints = process.StandardError.ReadToEndAsync();
        var said = process.StandardOutput.ReadToEnd();
        Assert.True(process.WaitForExit(TimeSpan.FromSeconds(60)), $"{program} does not end");
        Assert.True(process.ExitCode == 0, $"{program}: {said}{complaints.Result}");
        return said;
    }
}
