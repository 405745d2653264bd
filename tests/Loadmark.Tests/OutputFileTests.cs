using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Loadmark.Files;
using Loadmark.Storage;

namespace Loadmark.Tests;

/// <summary>What commands write: nothing is written over that somebody did not mean to give up.</summary>
public sealed class OutputFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-output-").FullName;

    public OutputFileTests()
    {
        File.WriteAllText(In("board.rig.yaml"), SmallBoard.Text);
        Assert.Equal(0, Run("gear", "add", "--from", In("board.rig.yaml")).Code);
        Assert.Equal(0, Run("rigs", "import", In("board.rig.yaml")).Code);
    }

    /// <summary>Each command that writes a file; the file's name goes last.</summary>
    public static TheoryData<string> Commands { get; } = new("plan RIG --write", "startup RIG --csv", "netlist RIG --out", "gear export", "rigs export Small_board");

    private string Data => In("data");

    private string Database => Path.Combine(Data, Store.FileName);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_file_that_is_there_is_replaced_only_where_that_is_asked_for(string command)
    {
        var file = In("out.yaml");
        File.WriteAllText(file, "mine");
        Refuses(command, file, "out.yaml is there already. With --force it is replaced.");
        Assert.Equal("mine", File.ReadAllText(file));
        Assert.Equal((0, ""), Write(command, file, "--force"));
        Assert.NotEqual("mine", File.ReadAllText(file));
        File.Delete(file);
        Assert.Equal((0, ""), Write(command, file));
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void The_store_is_never_written_over(string command)
    {
        var before = File.ReadAllBytes(Database);
        foreach (var name in (string[])[Store.FileName, $"{Store.FileName}-wal", $"{Store.FileName}-journal"])
            Refuses(command, Path.Combine(Data, name), "belongs to the store that rigs and gear are kept in", "--force");
        if (!OperatingSystem.IsWindows())
        {
            File.CreateSymbolicLink(In("file-link"), Database);
            Directory.CreateSymbolicLink(In("folder-link"), Data);
            Refuses(command, In("file-link"), "belongs to the store", "--force");
            Refuses(command, Path.Combine(In("folder-link"), Store.FileName), "belongs to the store", "--force");
        }

        Assert.Equal(before, File.ReadAllBytes(Database));
    }

    [Theory]
    [InlineData("plan RIG --write")]
    [InlineData("startup RIG --csv")]
    [InlineData("netlist RIG --out")]
    public void What_is_read_is_never_written_over(string command)
    {
        Refuses(command, In("board.rig.yaml"), "is what is read, and is not written over. Name another file.", "--force");
        Refuses(command, Path.Combine(_folder, "data", "..", "board.rig.yaml"), "is what is read", "--force");
        if (!OperatingSystem.IsWindows())
        {
            File.CreateSymbolicLink(In("link.rig.yaml"), In("board.rig.yaml"));
            Refuses(command, In("link.rig.yaml"), "is what is read", "--force");
        }

        Assert.Equal(SmallBoard.Text, File.ReadAllText(In("board.rig.yaml")));
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_pipe_or_a_device_is_never_written_over(string command)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "devices have other names there");
        var pipe = In("pipe");
        using (var made = Process.Start("mkfifo", [pipe]))
            made.WaitForExit();
        Refuses(command, pipe, "pipe is no ordinary file, but a pipe, a device or the like.", "--force");
        Refuses(command, "/dev/null", "/dev/null is no ordinary file", "--force");
        Refuses(command, "/dev/zero", "/dev/zero is no ordinary file", "--force");
        Refuses(command, "/dev/stdout", "/dev/stdout is no ordinary file", "--force");
        Refuses(command, "/dev/null", "/dev/null is no ordinary file");
        Assert.Throws<IOException>(() => RigFile.Save(pipe, "x"));
        Assert.Throws<IOException>(() => RigFile.Save("/dev/null", "x"));
        Assert.False(OrdinaryFile.Is(pipe));
        Assert.False(OrdinaryFile.Is("/dev/null"));
    }

    [Fact]
    public void An_empty_file_is_an_ordinary_one_and_a_link_to_nothing_is_none()
    {
        File.WriteAllText(In("empty"), "");
        Assert.True(OrdinaryFile.Is(In("empty")));
        Assert.Equal((0, ""), Write("gear export", In("empty"), "--force"));
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need a privilege there");
        File.CreateSymbolicLink(In("link"), In("new.yaml"));
        Refuses("gear export", In("link"), "link is there already.");
        Refuses("gear export", In("link"), "link is no ordinary file", "--force");
        Assert.Throws<IOException>(() => RigFile.Save(In("link"), "x"));
        Assert.False(File.Exists(In("new.yaml")));
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_name_that_is_none_is_told_in_a_sentence(string command)
    {
        Refuses(command, "", "needs the name of a file.");
        Refuses(command, _folder, "is a folder. Name a file in it.");
        Refuses(command, In(Path.Combine("none", "x")), "cannot be written: there is no folder");
        if (!command.StartsWith("plan", StringComparison.Ordinal) && !command.StartsWith("netlist", StringComparison.Ordinal))
            Refuses(command, "-", "- is no file, and the answer goes to standard output already. Name a file.");
    }

    [Fact]
    public void A_file_that_appears_meanwhile_is_not_replaced()
    {
        File.WriteAllText(In("late"), "mine");
        Assert.ThrowsAny<IOException>(() => RigFile.Save(In("late"), "x", overwrite: false));
        Assert.Equal("mine", File.ReadAllText(In("late")));
        Assert.DoesNotContain(Directory.GetFiles(_folder), file => file.EndsWith(".tmp", StringComparison.Ordinal));
    }

    [Fact]
    public void A_planned_rig_goes_to_standard_output_in_the_place_of_the_answer()
    {
        var (code, output, error) = Run("plan", In("board.rig.yaml"), "--write", "-");
        Assert.Equal((0, ""), (code, error));
        Assert.Equal(SmallBoard.Planned, output);
        Assert.Contains("Use one of them.", Run("plan", In("board.rig.yaml"), "--write", "-", "--json").Error, StringComparison.Ordinal);
        Assert.StartsWith("*", Run("netlist", In("board.rig.yaml"), "--out", "-").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--data needs the name of a folder after it.", "--data")]
    [InlineData("--data needs the name of a folder after it.", "--data", "")]
    [InlineData("--data needs the name of a folder after it.", "gear", "list", "--data")]
    [InlineData("--data needs the name of a folder after it.", "gear", "--data")]
    [InlineData("--port needs a number after it.", "--port")]
    [InlineData("--log needs the word text or json after it.", "--log")]
    [InlineData("--write needs the name of a file after it.", "plan", "x", "--write")]
    [InlineData("--csv needs the name of a file after it.", "startup", "x", "--csv")]
    [InlineData("--out needs the name of a file after it.", "netlist", "x", "--out")]
    public void An_option_with_nothing_after_it_is_told_in_a_sentence(string complaint, params string[] args)
    {
        var (code, output, error) = Run(args);
        Assert.Equal((2, ""), (code, output));
        Assert.StartsWith($"loadmark: {complaint}\n", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Ports_that_are_all_taken_are_told_in_a_sentence()
    {
        // The last port there is: nothing comes after it to move on to.
        using var taken = new TcpListener(IPAddress.Loopback, ushort.MaxValue);
        taken.Start();
        var (code, _, error) = Run("--port", "65535", "--no-browser");
        Assert.Equal(2, code);
        Assert.Contains("loadmark: no port from 65535 to 65535 is free. Name another with --port, or 0 for any that is free.\n", error, StringComparison.Ordinal);
    }

    private string In(string name) => Path.Combine(_folder, name);

    private void Refuses(string command, string file, string because, params string[] more)
    {
        var (code, error) = Write(command, file, more);
        Assert.Equal(2, code);
        Assert.StartsWith("loadmark: ", error, StringComparison.Ordinal);
        Assert.Contains(because, error, StringComparison.Ordinal);
    }

    private (int Code, string Error) Write(string command, string file, params string[] more)
    {
        var args = command.Split(' ').Select(word => word == "RIG" ? In("board.rig.yaml") : word.Replace('_', ' '));
        var (code, _, error) = Run([.. args, file, .. more]);
        return (code, error);
    }

    private (int Code, string Output, string Error) Run(params string[] args) => LibraryRun.In(Data, TimeProvider.System, args);
}
