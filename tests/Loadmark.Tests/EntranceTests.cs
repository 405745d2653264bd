using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using Loadmark.Processes;
using Loadmark.Serving;
using Loadmark.Web.Guarding;

namespace Loadmark.Tests;

/// <summary>How the program tells the user, and nobody else, how to get in.</summary>
public sealed partial class EntranceTests : IDisposable
{
    private const UnixFileMode UserOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-entrance-").FullName;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task The_key_is_printed_kept_for_the_user_alone_and_gone_when_it_ends()
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        using var output = new MemoryStream();
        using var error = new StringWriter();
        var data = Path.Combine(_folder, "data");
        var process = new ProcessContext { Output = output, Error = error, Input = static () => Stream.Null };
        var running = PageServer.RunAsync(new PageOptions { Folder = data, Port = 0, OpensBrowser = false }, process, stop.Token);
        var printed = Match.Empty;
        for (var tries = 0; tries < 600 && !printed.Success; tries++)
        {
            await Task.Delay(50, Stop);
            printed = Printed().Match(Encoding.UTF8.GetString(output.ToArray()));
        }

        var (header, page) = (Path.Combine(data, $"loadmark-{printed.Groups["port"].Value}.header"), Path.Combine(data, $"loadmark-{printed.Groups["port"].Value}.html"));
        Assert.Equal($"Authorization: Bearer {printed.Groups["key"].Value}\n", await File.ReadAllTextAsync(header, Stop));
        Assert.Contains($"url={printed.Groups["address"].Value}\"", await File.ReadAllTextAsync(page, Stop), StringComparison.Ordinal);
        Assert.Contains($"Other programs find its key in {header}", Encoding.UTF8.GetString(output.ToArray()), StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows())
            Assert.Equal((UserOnly, UserOnly), (File.GetUnixFileMode(header), File.GetUnixFileMode(page)));

        await stop.CancelAsync();
        Assert.Null(await running);
        Assert.Equal("", error.ToString());
        Assert.Empty(Directory.GetFiles(data, "loadmark-*"));
    }

    /// <summary>A file that others can read, or a link to one, may lie there: in a folder that others write to, or after a program that was killed.</summary>
    [Fact]
    public void What_lies_there_is_replaced_and_not_written_into()
    {
        if (OperatingSystem.IsWindows())
            return; // modes and links are other there

        var (theirs, key) = (Path.Combine(_folder, "theirs"), EntryKey.New());
        File.WriteAllText(theirs, "mine");
        File.CreateSymbolicLink(Path.Combine(_folder, "loadmark-5230.header"), theirs);
        File.WriteAllText(Path.Combine(_folder, "loadmark-5230.html"), "open to all");
        File.SetUnixFileMode(Path.Combine(_folder, "loadmark-5230.html"), UserOnly | UnixFileMode.OtherRead);
        using (var files = EntranceFiles.Write(_folder, "http://127.0.0.1:5230", key))
        {
            Assert.Equal("mine", File.ReadAllText(theirs));
            Assert.Null(new FileInfo(files.Header).LinkTarget);
            Assert.Equal($"{key.HeaderLine}\n", File.ReadAllText(files.Header));
            Assert.Equal(UserOnly, File.GetUnixFileMode(files.Page));
        }

        Assert.Equal(["theirs"], Directory.GetFiles(_folder).Select(Path.GetFileName));
    }

    [Fact]
    public async Task Without_a_folder_to_write_to_the_printed_address_lets_in_all_the_same()
    {
        var file = Path.Combine(_folder, "a file where the folder should be");
        await File.WriteAllTextAsync(file, "", Stop);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        using var output = new MemoryStream();
        using var error = new StringWriter();
        var running = PageServer.RunAsync(new PageOptions { Folder = file, Port = 0 }, new ProcessContext { Output = output, Error = error, Input = static () => Stream.Null }, stop.Token);
        for (var tries = 0; tries < 600 && output.Length == 0; tries++)
            await Task.Delay(50, Stop);
        using (var client = new HttpClient())
            Assert.True((await client.GetAsync(new Uri(Printed().Match(Encoding.UTF8.GetString(output.ToArray())).Groups["address"].Value), Stop)).IsSuccessStatusCode);
        Assert.Contains("so no browser is opened; open the address yourself", error.ToString(), StringComparison.Ordinal);
        await stop.CancelAsync();
        Assert.Null(await running);
    }

    /// <summary>What a command is given is in the list of processes, which every account can read.</summary>
    [Fact]
    public async Task The_browser_is_opened_with_a_file_and_the_key_is_in_no_list_of_processes()
    {
        if (!OperatingSystem.IsLinux())
            return; // the desktop's opener is another command there

        // In the place of the desktop's opener: writes down what it was given, and what started it.
        var (opener, seen, data) = (Path.Combine(_folder, "xdg-open"), Path.Combine(_folder, "seen"), Path.Combine(_folder, "data"));
        await File.WriteAllTextAsync(opener, $"#!/bin/sh\n{{ echo \"$@\"; tr '\\0' ' ' < /proc/$PPID/cmdline; tr '\\0' ' ' < /proc/$$/cmdline; }} > {seen}.part\nmv {seen}.part {seen}\n", Stop);
        File.SetUnixFileMode(opener, UserOnly | UnixFileMode.UserExecute);
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "loadmark.dll"), "--data", data, "--port", "0"]) { UseShellExecute = false, RedirectStandardOutput = true };
        var home = Directory.CreateDirectory(Path.Combine(_folder, "home")).FullName;
        start.Environment["HOME"] = home;
        start.Environment["PATH"] = $"{_folder}:{Environment.GetEnvironmentVariable("PATH")}";
        using var program = Process.Start(start)!;
        try
        {
            var printed = Printed().Match(await program.StandardOutput.ReadLineAsync(Stop) ?? "");
            for (var tries = 0; tries < 600 && !File.Exists(seen); tries++)
                await Task.Delay(50, Stop);
            var text = await File.ReadAllTextAsync(seen, Stop);
            Assert.StartsWith($"{Path.Combine(data, $"loadmark-{printed.Groups["port"].Value}.html")}\n", text, StringComparison.Ordinal);
            Assert.Contains("loadmark.dll", text, StringComparison.Ordinal);
            Assert.DoesNotContain(printed.Groups["key"].Value, text, StringComparison.Ordinal);
            Assert.Empty(Directory.EnumerateFileSystemEntries(home)); // nor does the framework write keys of its own there
        }
        finally
        {
            program.Kill(entireProcessTree: true);
            await program.WaitForExitAsync(CancellationToken.None);
        }
    }

    [GeneratedRegex(@"^Loadmark is at (?<address>http://127\.0\.0\.1:(?<port>\d+)/\?key=(?<key>[\w-]{43})) ", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Printed();
}
