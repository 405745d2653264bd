using System.Text;
using Loadmark.CommandLines;
using Loadmark.Commands;
using Loadmark.Questions;

namespace Loadmark.Tests;

/// <summary>What is made of the commands' specs: help, the table in README, examples that are understood.</summary>
public sealed class CommandSpecTests
{
    /// <summary>Every command as it is typed; the program itself is the empty one.</summary>
    public static TheoryData<string> Paths => [.. PathsOf(ProgramCommands.Program, "").Select(static one => one.Path)];

    [Theory]
    [MemberData(nameof(Paths))]
    public void Each_command_has_its_help(string path)
    {
        var words = path.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var answer = new ProgramRun().Run([.. words, "--help"]);
        Assert.Equal((0, ""), (answer.Code, answer.Error));
        Expected.Matches($"help-{(path.Length == 0 ? "program" : path.Replace(' ', '-'))}.txt", answer.Output);
        Assert.Equal(answer.Output, new ProgramRun().Run(["help", .. words]).Output);
        Assert.Equal(answer.Output, new ProgramRun().Run([.. words, "-h"]).Output);
        Assert.All(answer.Output.Split('\n'), static line => Assert.InRange(line.Length, 0, 80));
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void An_example_is_understood(string path)
    {
        var example = PathsOf(ProgramCommands.Program, "").Single(one => one.Path == path).Spec.Example;
        if (path.Length == 0)
        {
            Assert.Equal("", example);
            return;
        }

        var args = Words(example);
        Assert.Equal("loadmark", args[0]);
        using var error = new StringWriter();
        var ran = 0;
        var parser = new CommandParser(Silenced(ProgramCommands.Program, () => ran++));
        var process = new Processes.ProcessContext { Output = Stream.Null, Error = error, Input = static () => Stream.Null };
        var code = parser.Run([.. args.Skip(1)], process, new ProgramRun(), static (_, _) => throw new InvalidOperationException());
        Assert.Equal((0, 1, ""), (code, ran, error.ToString()));
    }

    /// <summary>A command that answers at once does not wait for the others to be told.</summary>
    [Fact]
    public void Of_all_commands_the_one_that_is_run_is_told()
    {
        var ran = 0;
        var parser = new CommandParser(new CommandSpec
        {
            Question = "of all commands one is run",
            Commands =
            [
                new("once", () => new() { Question = "is told", Run = _ => ++ran }),
                new("never", static () => throw new InvalidOperationException("It was told.")),
            ],
        });
        using var error = new StringWriter();
        var process = new Processes.ProcessContext { Output = Stream.Null, Error = error, Input = static () => Stream.Null };
        var code = parser.Run(["once", "upon"], process, new ProgramRun(), static (_, _) => throw new InvalidOperationException());
        Assert.Equal((1, 1, ""), (code, ran, error.ToString()));
    }

    /// <summary>An option of the same name means the same to the command line and in an address, since it is told once.</summary>
    [Fact]
    public void No_command_has_two_options_of_a_name_and_every_text_is_a_sentence()
    {
        foreach (var (path, spec) in PathsOf(ProgramCommands.Program, ""))
        {
            var options = spec.EveryOption.ToList();
            Assert.Equal(options.Count, options.Select(static option => option.Name).Distinct().Count());
            Assert.All(options, static option => Assert.EndsWith(".", option.Text, StringComparison.Ordinal));
            Assert.All(spec.Parameters, static parameter => Assert.EndsWith(".", parameter.Text, StringComparison.Ordinal));
            Assert.All(options, static option => Assert.Equal(option.Kind == OptionKind.Flag, option.Placeholder.Length == 0));
            Assert.True(spec.Documentation is null || File.Exists(Repository.PathOf(spec.Documentation)), $"{path}: {spec.Documentation}");
            Assert.True(spec.Run is null || spec.Json is not null || spec.WhyNoJson is not null, path);
        }
    }

    [Fact]
    public void README_has_the_table_of_the_commands()
    {
        var path = Repository.PathOf("README.md");
        var text = File.ReadAllText(path);
        const string head = "| command | question | more |\n| --- | --- | --- |\n";
        var begin = text.IndexOf(head, StringComparison.Ordinal);
        Assert.True(begin >= 0, "README has no table of commands.");
        var end = text.IndexOf("\n\n", begin, StringComparison.Ordinal) + 1;
        var table = new StringBuilder(head).Append("| `loadmark` | opens the page | [entering](docs/entering.md) |\n");
        foreach (var command in ProgramCommands.Program.Commands)
        {
            var spec = command.Spec;
            var below = spec.Commands.Count == 0 ? "" : $": {string.Join(", ", spec.Commands.Select(static one => one.Name))}";
            var more = spec.Documentation is { } page ? $"[{(page.EndsWith("README.md", StringComparison.Ordinal) ? Path.GetFileName(Path.GetDirectoryName(page)) : Path.GetFileNameWithoutExtension(page))}]({page})" : "";
            table.Append($"| `loadmark {command.Name} {spec.FullUsage(withCommon: false)}` | {spec.Question}{below} | {more} |\n");
        }

        if (Environment.GetEnvironmentVariable("LOADMARK_UPDATE_EXPECTED") is not null)
            File.WriteAllText(path, $"{text[..begin]}{table}{text[end..]}");
        else
            Assert.Equal(table.ToString(), text[begin..end]);
    }

    private static IEnumerable<(string Path, CommandSpec Spec)> PathsOf(CommandSpec spec, string path) =>
        spec.Commands.SelectMany(below => PathsOf(below.Spec, $"{path} {below.Name}".TrimStart())).Prepend((path, spec));

    /// <summary>The same commands, each of which only says that it was run.</summary>
    private static CommandSpec Silenced(CommandSpec spec, Action ran) => spec with
    {
        Commands = [.. spec.Commands.Select(below => new CommandEntry(below.Name, () => Silenced(below.Spec, ran)))],
        Run = spec.Run is null ? null : _ =>
        {
            ran();
            return 0;
        },
    };

    /// <summary>The words of a line as a shell parts them where only double quotes are used.</summary>
    private static List<string> Words(string line) =>
        [.. line.Split('"').SelectMany(static (part, index) => index % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries))];
}
