using Loadmark.Core.Texts;
using Loadmark.CommandLines;
using Loadmark.Commands;
using Loadmark.Core.Checks;
using Loadmark.Files.Errors;
using Loadmark.Processes;
using Loadmark.Serving;
using Loadmark.Serving.Logs;

namespace Loadmark.Tests;

public sealed class CommandLineTests
{
    [Theory]
    [InlineData(Severity.Good, 0)]
    [InlineData(Severity.Note, 0)]
    [InlineData(Severity.Margin, 0)]
    [InlineData(Severity.Noise, 0)]
    [InlineData(Severity.Unsure, 0)]
    [InlineData(Severity.Open, 1)]
    [InlineData(Severity.Fails, 1)]
    [InlineData(Severity.Harm, 1)]
    public void The_exit_code_tells_whether_a_rig_is_refused(Severity severity, int code)
    {
        var bench = new ProgramRun().With("a.yaml", DemoResults.WithSeverity(severity, "Board"));
        Assert.Equal(code, bench.Run("check", "a.yaml").Code);
        Assert.Equal(code, bench.Run("check", "--json", "a.yaml").Code);
    }

    [Fact]
    public void What_cannot_be_read_outweighs_what_fails_and_the_rest_is_still_answered()
    {
        var answer = new ProgramRun()
            .With("typo.yaml", new FileError("@", 1, 1, "It is not there.") { Found = "", Expected = "", Suggestion = null })
            .With("pit.yaml", DemoResults.Pit)
            .Run("check", "typo.yaml", "pit.yaml");
        Assert.Equal(2, answer.Code);
        Assert.Equal("typo.yaml:1:1: It is not there.\n", answer.Error);
        Assert.Contains("Pit board, bass chair", answer.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("There is no option --jsn. Did you mean --json?", "check", "--jsn", "a.yaml")]
    [InlineData("There is no option --wibble.", "read", "--wibble", "9V")]
    [InlineData("There is no command chekc. Did you mean check?", "chekc", "a.yaml")]
    [InlineData("There is no command wibble.", "wibble")]
    [InlineData("There is no option --hlep. Did you mean --help?", "--hlep")]
    [InlineData("check needs the path of a rig file, or - for one on standard input.", "check")]
    [InlineData("- stands for standard input, which can be read once only.", "check", "-", "a.yaml", "-")]
    [InlineData("- stands for standard input, which can be read once only.", "rigs", "import", "-", "-")]
    [InlineData("--port: expected a number from 0 (any that is free) to 65535, found '70000'.", "--port", "70000")]
    [InlineData("--port: expected a number from 0 (any that is free) to 65535, found 'x'.", "--port", "x")]
    [InlineData("--log: expected text or json, found 'xml'.", "--log", "xml")]
    [InlineData("--log needs the word text or json after it.", "--log")]
    [InlineData("--prices needs the name of a file after it.", "buy", "a.yaml", "--prices")]
    [InlineData("buy needs the path of one rig file, and one price list after --prices.", "buy", "a.yaml")]
    [InlineData("rigs list takes nothing more.", "rigs", "list", "all")]
    [InlineData("gear needs to know what to do: list, show, add, measure, import, export.", "gear")]
    [InlineData("There is no command lsit. Did you mean list?", "gear", "lsit")]
    [InlineData("There is no option --froce. Did you mean --force?", "gear", "export", "a.yaml", "--froce")]
    [InlineData("There is no option --port here; it goes with loadmark alone and meter.", "check", "a.yaml", "--port", "80")]
    [InlineData("There is no option --force here; it goes with plan, startup, netlist, sheet, restore-sheet, backup, gear export and rigs export.", "salvage", "p", "--force")]
    [InlineData("There is no option --version here; it goes with loadmark alone.", "check", "a.yaml", "--version")]
    [InlineData("the page answers in a browser, not in JSON.", "--json")]
    [InlineData("read needs the text of a nameplate, or - to read lines from standard input.", "read", "--json")]
    public void A_wrong_command_line_is_explained(string complaint, params string[] args)
    {
        var answer = new ProgramRun().Run(args);
        Assert.Equal(2, answer.Code);
        Assert.Equal("", answer.Output);
        Assert.StartsWith($"loadmark: {complaint}\n", answer.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("-9V")]
    [InlineData("@9V")]
    [InlineData("--", "--json")]
    [InlineData("")]
    public void Any_text_may_be_a_nameplate(params string[] text) => Assert.Equal(0, new ProgramRun().Run(["read", .. text]).Code);

    [Fact]
    public void The_program_alone_opens_the_page()
    {
        var options = PageOptions([]);
        Assert.Equal((5230, true, new LogOptions()), (options.Port, options.OpensBrowser, options.Log));
        options = PageOptions(["--data", "bench", "--port", "8080", "--no-browser"]);
        Assert.Equal((8080, false), (options.Port, options.OpensBrowser));
        Assert.EndsWith("bench", options.Folder, StringComparison.Ordinal);
        Assert.Equal(new LogOptions { Form = LogForm.Json, WithContent = true }, PageOptions(["--log", "json", "--log-content"]).Log);
    }

    /// <summary>How the page would be served.</summary>
    private static PageOptions PageOptions(string[] args)
    {
        PageOptions? found = null;
        var parser = new CommandParser(ProgramCommands.Program with
        {
            Run = input =>
            {
                found = PageCommand.OptionsOf(input, out _);
                return 0;
            },
        });
        using var error = new StringWriter();
        var process = new ProcessContext { Output = Stream.Null, Error = error, Input = static () => Stream.Null };
        Assert.Equal(0, parser.Run(args, process, new ProgramRun(), static (_, _) => throw new InvalidOperationException()));
        return found!;
    }

    [Fact]
    public void The_version_is_one_line() => Assert.Matches("^loadmark [0-9]+\\.[0-9]+\\.[0-9]+\n$", new ProgramRun().Run("--version").Output);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_fault_of_the_program_is_told_once_and_plainly(bool debug)
    {
        var answer = new ProgramRun { Debug = debug }.Run("check", "unheard-of.yaml");
        Assert.Equal(70, answer.Code);
        Assert.Equal("", answer.Output);
        Assert.Contains("a fault in the program", answer.Error, StringComparison.Ordinal);
        Assert.Equal(debug, answer.Error.Contains(nameof(KeyNotFoundException), StringComparison.Ordinal));
    }

    private static IEnumerable<string> CommandNames => ProgramCommands.Program.Commands.Select(static command => command.Name);

    [Fact]
    public void The_nearest_word_is_near()
    {
        Assert.Equal("check", NearestWord.Find("chck", CommandNames));
        Assert.Equal("read", NearestWord.Find("raed", CommandNames));
        Assert.Null(NearestWord.Find("dishwasher", CommandNames));
    }

    [Theory]
    [InlineData(null, 0, 80)]
    [InlineData("100", 0, 100)]
    [InlineData("100", 72, 72)]
    [InlineData("wide", 0, 80)]
    [InlineData("-5", 0, 80)]
    [InlineData("7", 0, 50)]
    [InlineData(null, 400, 120)]
    public void The_page_is_as_wide_as_the_terminal_within_reason(string? columns, int terminal, int width) =>
        Assert.Equal(width, ProcessContext.WidthFrom(columns, terminal));

    [Theory]
    [InlineData(false, null, "xterm", true)]
    [InlineData(true, null, "xterm", false)]
    [InlineData(false, "1", "xterm", false)]
    [InlineData(false, "", "xterm", true)]
    [InlineData(false, null, "dumb", false)]
    [InlineData(false, null, null, true)]
    public void Colour_is_for_terminals_that_want_it(bool redirected, string? noColour, string? term, bool colour) =>
        Assert.Equal(colour, ProcessContext.TakesColour(redirected, name => name == "NO_COLOR" ? noColour : term));
}
