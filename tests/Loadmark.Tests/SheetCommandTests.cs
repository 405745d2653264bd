namespace Loadmark.Tests;

/// <summary><c>loadmark sheet</c>: the paper that goes with a rig, as a file.</summary>
public sealed class SheetCommandTests : IDisposable
{
    private static readonly string Pit = Repository.PathOf("examples", "pit.rig.yaml");

    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-sheet-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("a.pdf", "%PDF-1.7\n")]
    [InlineData("a.SVG", "<svg ")]
    [InlineData("a.png", "\u0089PNG\r\n\u001a\n")]
    [InlineData("a.txt", "<svg ", "--as", "svg")]
    public void It_is_what_the_name_says_or_is_asked_for(string name, string beginning, params string[] more)
    {
        var file = Path.Combine(_folder, name);
        Assert.Empty(Run(0, ["sheet", Pit, "--out", file, "--only", "diagram", "--date", "2026-11-30", .. more]).Output);
        Assert.StartsWith(beginning, System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(file)), StringComparison.Ordinal);
        Assert.Contains("is there already", Run(2, ["sheet", Pit, "--out", file, "--only", "diagram", .. more]).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_makes_it_the_same_twice()
    {
        var (one, other) = (Path.Combine(_folder, "one.pdf"), Path.Combine(_folder, "other.pdf"));
        Run(0, "sheet", Pit, "--out", one, "--date", "2026-11-30");
        Run(0, "sheet", Pit, "--out", other, "--date", "2026-11-30");
        Assert.Equal(File.ReadAllBytes(one), File.ReadAllBytes(other));
    }

    [Fact]
    public void Standard_output_takes_it_too() =>
        Assert.StartsWith("%PDF-1.7", Run(0, "sheet", Pit, "--out", "-", "--only", "player").Output, StringComparison.Ordinal);

    [Fact]
    public void Characters_that_show_as_boxes_are_told()
    {
        var rig = Path.Combine(_folder, "r.rig.yaml");
        File.WriteAllText(rig, "rig: r\nloads:\n  x: { name: 日本, label: 9V 20mA }\n");
        var error = Run(0, "sheet", rig, "--out", Path.Combine(_folder, "r.pdf")).Error;
        Assert.Contains("the typeface of the sheet has no 日 (U+65E5, in 日本): it shows as a box.", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_price_list_prices_what_is_to_be_bought()
    {
        var rig = Path.Combine(_folder, "r.rig.yaml");
        File.WriteAllText(rig, "rig: r\nsupplies:\n  wall-2: { to_buy: yes, label: INPUT 100-240V~ 50/60Hz OUTPUT 9V DC 300mA centre negative }\n");
        var prices = Repository.PathOf("examples", "harbour-row.prices.csv");
        var svg = Run(0, "sheet", rig, "--out", "-", "--as", "svg", "--only", "shopping", "--prices", prices).Output;
        Assert.Contains(">In all 11.00.<", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("In all", Run(0, "sheet", rig, "--out", "-", "--as", "svg", "--only", "shopping").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_price_list_that_cannot_be_read_is_told_and_is_never_written_over()
    {
        var prices = Path.Combine(_folder, "p.svg");
        File.WriteAllText(prices, "supply,prise\nwall-2,11\n");
        Assert.Contains("'prise' is not a column of a price list", Run(2, "sheet", Pit, "--out", "-", "--prices", prices).Error, StringComparison.Ordinal);
        Run(2, "sheet", Pit, "--out", prices, "--prices", prices, "--force");
        Assert.StartsWith("supply", File.ReadAllText(prices), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("the end of the name does not say what it is to be", "--out", "a.doc")]
    [InlineData("--as: expected pdf, svg or png, found \"gif\"", "--out", "a.pdf", "--as", "gif")]
    [InlineData("--dpi: expected a number from 36 to 600, found \"9\"", "--out", "a.png", "--dpi", "9")]
    [InlineData("--date: expected a day such as 2026-11-30, found \"today\"", "--out", "a.pdf", "--date", "today")]
    [InlineData("--only: expected diagram, feeds, leads, shopping, labels, findings, startup, player, codes, found \"all\"", "--out", "a.pdf", "--only", "all")]
    [InlineData("--reels: expected reels such as 25 m or 10 m x 2, up to 10000 m, found \"25\"", "--out", "a.pdf", "--reels", "25")]
    public void A_wrong_option_is_told_before_anything_is_done(string complaint, params string[] options)
    {
        Assert.Contains(complaint, Run(2, ["sheet", Pit, .. options]).Error, StringComparison.Ordinal);
        Assert.False(File.Exists(options[1]));
    }

    private static ProgramRun.Answer Run(int code, params string[] args)
    {
        var answer = ProgramRun.Answering(TestContext.Current.CancellationToken, args);
        Assert.True(answer.Code == code, $"{answer.Code}: {answer.Error}");
        return answer;
    }
}
