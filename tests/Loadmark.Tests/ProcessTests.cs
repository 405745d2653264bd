using System.Text.RegularExpressions;
using System.Diagnostics;
using Loadmark.Processes;

namespace Loadmark.Tests;

/// <summary>The program as a process of its own: what can only be seen from outside.</summary>
public sealed partial class ProcessTests
{
    [Fact]
    public void Signs_beyond_ASCII_are_shown_where_the_output_takes_them()
    {
        Assert.Contains("✖ harm", Run("C.UTF-8", "", "check", "--help").Output, StringComparison.Ordinal);
        Assert.Contains("X harm", Run("en_GB.ISO-8859-1", "", "check", "--help").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Redirected_output_has_no_escapes_and_no_byte_order_mark()
    {
        var output = Run("C.UTF-8", "", "read", "9V DC 300mA").Output;
        Assert.StartsWith("9V DC 300mA", output, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', output);
    }

    [Fact]
    public void Standard_input_is_read() => Assert.StartsWith("{\"supply\":", Run("C.UTF-8", "9V DC 300mA\n", "read", "-", "--json").Output, StringComparison.Ordinal);

    /// <summary>A pipe can be read once only, and nothing may look into it before the command does.</summary>
    [Theory]
    [InlineData("check", "-")]
    [InlineData("check", "/dev/stdin")]
    public void A_rig_comes_through_a_pipe(params string[] args)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() && args[1] != "-", "devices have other names there");
        var (code, output, error) = Run("C.UTF-8", "rig: Board\nloads: { drive-3: 9V DC 12mA }\nsupplies: { adaptor: 9V DC 1A }\nwired: [{ from: adaptor, to: drive-3 }]\n", args);

        // On a busy machine the pipe may be slow, which is said after a second.
        Assert.Equal((ExitCode.Fine, ""), (code, WaitNotice().Replace(error, "")));
        Assert.Contains("Board", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_device_without_an_end_is_refused()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "devices have other names there");
        var (code, _, error) = Run("C.UTF-8", "", "check", "/dev/zero");
        Assert.Equal((ExitCode.Unreadable, "/dev/zero: the file is over 1 MiB; a rig file is never that large\n"), (code, error));
    }

    [Fact]
    public void A_wrong_command_line_ends_with_2()
    {
        var (code, output, error) = Run("C.UTF-8", "", "chekc");
        Assert.Equal(ExitCode.Unreadable, code);
        Assert.Equal("", output);
        Assert.Contains("Did you mean check?", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_interrupt_ends_with_130()
    {
        if (OperatingSystem.IsWindows())
            return; // there is no kill to send it with

        using var process = Start("C.UTF-8", "read", "-", "--json");
        await process.StandardInput.WriteLineAsync("9V DC");
        await process.StandardInput.FlushAsync(TestContext.Current.CancellationToken);
        var interrupted = await InterruptWhenReady(process);
        Assert.True(interrupted);
        Assert.Equal(ExitCode.Interrupted, process.ExitCode);
        Assert.Equal("", WaitNotice().Replace(await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken), ""));
    }

    /// <summary>The solver of plans would take the interrupt for itself, and the plan would go on: it says when it searches, and is interrupted then.</summary>
    [Fact]
    public async Task A_plan_that_is_being_searched_is_interrupted()
    {
        var folder = Directory.CreateTempSubdirectory("loadmark-process-").FullName;
        try
        {
            var file = Path.Combine(folder, "board.rig.yaml");
            await File.WriteAllTextAsync(file, HardRig.Sixty(), TestContext.Current.CancellationToken);
            using var process = Start("C.UTF-8", "plan", file);
            var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
            Assert.Contains("Ctrl-C shows the best so far", await process.StandardError.ReadLineAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
            using var kill = Process.Start("kill", ["-INT", process.Id.ToString()]);
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            Assert.Equal(ExitCode.Interrupted, process.ExitCode);
            Assert.StartsWith("PLAN", await output, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>A setting of the process decides whether the database can be used at all.</summary>
    [Fact]
    public void What_is_kept_can_be_listed_backed_up_and_restored()
    {
        var folder = Directory.CreateTempSubdirectory("loadmark-process-").FullName;
        try
        {
            var (data, copy, rig) = (Path.Combine(folder, "data"), Path.Combine(folder, "copy.db"), Path.Combine(folder, "board.rig.yaml"));
            File.WriteAllText(rig, "rig: Board\nloads:\n  delay-2: { from: library }\nsupplies:\n  brick: { isolated: true, outlets: { 1: 9 V 500 mA } }\nwired:\n  - { from: brick/1, to: delay-2 }\n");
            Fine("gear", "add", "delay-2", "9V DC 300mA", "--data", data);
            Fine("rigs", "import", rig, "--data", data);
            Fine("backup", copy, "--data", data);
            Fine("restore", copy, "--data", data);
            Assert.Contains("Board", Fine("rigs", "list", "--data", data), StringComparison.Ordinal);
            Assert.Contains("300 mA", Fine("check", rig, "--data", data), StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        static string Fine(params string[] args)
        {
            var (code, output, error) = Run("C.UTF-8", "", args);
            Assert.True(code == ExitCode.Fine, $"{string.Join(' ', args)}: {code} {error}");
            return output;
        }
    }

    /// <summary>Sends the interrupt once the process has had time to start, and waits for its end.</summary>
    private static async Task<bool> InterruptWhenReady(Process process)
    {
        await Task.Delay(TimeSpan.FromSeconds(1.5), TestContext.Current.CancellationToken);
        using var kill = Process.Start("kill", ["-INT", process.Id.ToString()]);
        await kill.WaitForExitAsync(TestContext.Current.CancellationToken);
        return process.WaitForExit(TimeSpan.FromSeconds(20));
    }

    private static (int Code, string Output, string Error) Run(string locale, string input, params string[] args)
    {
        using var process = Start(locale, args);
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.GetAwaiter().GetResult());
    }

    private static Process Start(string locale, params string[] args)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath is { } own && Path.GetFileNameWithoutExtension(own) == "dotnet" ? own : "dotnet")
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "loadmark.dll"));
        foreach (var arg in args)
            start.ArgumentList.Add(arg);
        start.Environment["LC_ALL"] = locale;
        return Process.Start(start) ?? throw new InvalidOperationException("The program did not start.");
    }

    [GeneratedRegex("(?m)^[0-9]+ s: waiting .*\\n", RegexOptions.None, 1000)]
    private static partial Regex WaitNotice();
}
