using System.Text;
using Loadmark.Core.Checks;
using Loadmark.Files.Errors;

namespace Loadmark.Tests;

public sealed class CheckTextTests
{
    [Fact]
    public void A_clean_rig() => Expected.Matches("check-clean.txt", new ProgramRun().With("a.yaml", DemoResults.Clean).Run("check", "a.yaml").Output);

    [Fact]
    public void A_rig_with_everything() => Expected.Matches("check-pit.txt", new ProgramRun().With("a.yaml", DemoResults.Pit).Run("check", "a.yaml").Output);

    [Fact]
    public void In_colour() =>
        Expected.Matches("check-pit.ansi.txt", new ProgramRun { Colour = true }.With("a.yaml", DemoResults.Pit).Run("check", "a.yaml").Output);

    [Fact]
    public void In_ASCII()
    {
        var answer = new ProgramRun { Encoding = Encoding.ASCII }.With("a.yaml", DemoResults.Pit).Run("check", "a.yaml");
        Expected.Matches("check-pit.ascii.txt", answer.Output);
        Assert.All(answer.Output, character => Assert.True(character is '\n' or (>= ' ' and <= '~')));
    }

    [Fact]
    public void On_a_narrow_page() =>
        Expected.Matches("check-pit.narrow.txt", new ProgramRun { Width = 50 }.With("a.yaml", DemoResults.Pit).Run("check", "a.yaml").Output);

    [Fact]
    public void Forty_loads() => Expected.Matches("check-festival.txt", new ProgramRun().With("a.yaml", DemoResults.Festival).Run("check", "a.yaml").Output);

    [Fact]
    public void Several_rigs()
    {
        var answer = SeveralRigs().Run("check", "rigs/fly.rig.yaml", "rigs/typo.rig.yaml", "rigs/pit.rig.yaml", "rigs/clean.rig.yaml");
        Expected.Matches("check-several.txt", answer.Output);
        Assert.Equal("rigs/typo.rig.yaml:12:3: \"isolatd\" is not a word of an outlet.\n", answer.Error);
    }

    [Fact]
    public void A_dozen_rigs()
    {
        var bench = new ProgramRun();
        var files = new List<string>();
        foreach (var severity in Enum.GetValues<Severity>().Concat(Enum.GetValues<Severity>()))
        {
            files.Add($"rigs/{files.Count:00}.rig.yaml");
            bench.With(files[^1], DemoResults.WithSeverity(severity, $"Board {files.Count}"));
        }

        Expected.Matches("check-dozen.txt", bench.Run(["check", .. files]).Output);
    }

    [Theory]
    [InlineData(50)]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void No_line_is_wider_than_the_page(int width)
    {
        var output = new ProgramRun { Width = width }.With("a.yaml", DemoResults.Pit).Run("check", "a.yaml").Output
            + new ProgramRun { Width = width }.With("a.yaml", DemoResults.Festival).Run("check", "a.yaml").Output
            + new ProgramRun { Width = width }.Run("read", "9V DC 300mA " + new string('x', 300) + " SER.NO 123").Output
            + new ProgramRun { Width = width }.Run("--help").Output;
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= width, $"{line.Length}: {line}"));
        Assert.All(output.Split('\n'), line => Assert.Equal(line.TrimEnd(), line));
    }

    [Fact]
    public void Without_colour_there_is_no_escape() =>
        Assert.DoesNotContain('\u001b', new ProgramRun().With("a.yaml", DemoResults.Pit).Run("check", "a.yaml").Output);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_hostile_rig_cannot_drive_the_terminal(bool colour)
    {
        var answer = new ProgramRun { Colour = colour }.With("a.yaml", DemoResults.Hostile)
            .With("b\u001b[2J.yaml", new FileError("@", 1, 2, "Found \u001b[2J here") { Found = "\u001b", Expected = "", Suggestion = null })
            .Run("check", "a.yaml", "b\u001b[2J.yaml");
        Assert.Contains("[red]Pit[/] ·[2J·]0;owned· ·txt·31m", answer.Output, StringComparison.Ordinal);
        Assert.Contains("[link=x]it[/]·.", answer.Output, StringComparison.Ordinal);
        var allowed = colour ? WithoutColours(answer.Output) : answer.Output;
        Assert.DoesNotContain(allowed + answer.Error, character => character != '\n' && char.IsControl(character));
        Assert.DoesNotContain('\u202E', answer.Output);
    }

    private static ProgramRun SeveralRigs() => new ProgramRun()
        .With("rigs/fly.rig.yaml", DemoResults.Quiet)
        .With("rigs/pit.rig.yaml", DemoResults.Pit)
        .With("rigs/clean.rig.yaml", DemoResults.Clean)
        .With("rigs/typo.rig.yaml", new FileError("@", 12, 3, "\"isolatd\" is not a word of an outlet.") { Found = "isolatd", Expected = "a word of an outlet", Suggestion = "isolated" });

    /// <summary>The text without the colour codes that the program itself writes, and nothing else.</summary>
    private static string WithoutColours(string text) =>
        System.Text.RegularExpressions.Regex.Replace(text, "\u001b\\[(?:0|1|2|(?:1;)?38;5;[0-9]+)m", "", System.Text.RegularExpressions.RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));
}
