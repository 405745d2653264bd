using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Loadmark.Browser.Tests.House;

/// <summary>The program serving its page, in a process and a data folder of its own.</summary>
internal sealed partial class RunningProgram : IAsyncDisposable
{
    private readonly Process _process;
    private readonly ConcurrentQueue<string> _errors = [];
    private readonly TaskCompletionSource<string> _firstLine = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private RunningProgram(Process process) => _process = process;

    /// <summary>Where the page is, without a slash at the end.</summary>
    public Uri Address { get; private set; } = null!;

    /// <summary>The secret that it printed.</summary>
    public string Key { get; private set; } = "";

    /// <summary>The address that it printed, which lets a browser in.</summary>
    public Uri Entrance => new(Address, $"?key={Key}");

    /// <summary>The process's number.</summary>
    public int Id => _process.Id;

    /// <summary>What it wrote to stderr so far.</summary>
    public IReadOnlyCollection<string> Errors => _errors;

    /// <summary>Fails when it has ended by itself, or has complained.</summary>
    /// <param name="known">How many of its lines an earlier test has answered for.</param>
    public void AssertWell(int known = 0)
    {
        Assert.True(!_process.HasExited, $"The program has ended by itself with {(_process.HasExited ? _process.ExitCode : 0)}: {string.Join(Environment.NewLine, _errors)}");
        var complaints = _errors.Skip(known).ToList();
        Assert.True(complaints.Count == 0, string.Join(Environment.NewLine, complaints));
    }

    /// <summary>Starts it and waits until it says where it is.</summary>
    /// <param name="folder">Where it keeps its rigs.</param>
    /// <param name="port">The port it is asked for; 0 for any.</param>
    public static async Task<RunningProgram> StartAsync(string folder, int port = 0)
    {
        // What a shell runs in the background is deaf to SIGINT, and so would be all that it starts.
        var start = new ProcessStartInfo("env", ["--default-signal=INT", "dotnet", BuiltProgram.File, "--data", folder, "--port", port.ToString(), "--no-browser"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            UseShellExecute = false,
        };
        start.Environment.Remove("LOADMARK_DATA");
        var running = new RunningProgram(Process.Start(start)!);
        await running.ReadAddressAsync();
        return running;
    }

    /// <summary>Sends it a signal and waits for its end.</summary>
    /// <param name="signal">"INT" or "TERM".</param>
    /// <returns>Its exit code.</returns>
    public async Task<int> EndAsync(string signal)
    {
        using (var kill = Process.Start("kill", [$"-{signal}", _process.Id.ToString()]))
            await kill.WaitForExitAsync();
        using var patience = new CancellationTokenSource(Patience.Program);
        await _process.WaitForExitAsync(patience.Token);
        return _process.ExitCode;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited)
        {
            _process.Kill(entireProcessTree: true);
            await _process.WaitForExitAsync();
        }

        _process.Dispose();
    }

    private async Task ReadAddressAsync()
    {
        _process.OutputDataReceived += (_, line) => _firstLine.TrySetResult(line.Data ?? "");
        _process.ErrorDataReceived += (_, line) =>
        {
            if (line.Data is { } text)
                _errors.Enqueue(text);
        };
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
        var line = await _firstLine.Task.WaitAsync(Patience.Program);
        var match = Printed().Match(line);
        Assert.True(match.Success, $"The first line should say where the page is: “{line}”; stderr: {string.Join(" / ", _errors)}");
        (Address, Key) = (new Uri(match.Groups["address"].Value), match.Groups["key"].Value);
    }

    [GeneratedRegex(@"^Loadmark is at (?<address>http://127\.0\.0\.1:\d+)/\?key=(?<key>[\w-]+) ", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Printed();
}
