using CsCheck;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;
using Loadmark.Files;
using Loadmark.Workshop.Sheets;

namespace Loadmark.Workshop.Tests.Sheets;

/// <summary>The sheet that goes with a rig, page by page.</summary>
public sealed class SheetTests
{
    internal static readonly SheetOptions Options = new() { Made = new DateTimeOffset(2026, 11, 30, 12, 0, 0, TimeSpan.Zero) };

    private static readonly string[] Names =
    [
        "Delay", "Delay with the long tail", "Żółw, Ω and λ", "日本のペダル", new('W', 90), "a name with as many words as it takes to go over the end of its line three times",
        "<b>&amp;</b>", "x\u0301\u0302y", "\u202Eleft\u202C", "",
    ];

    public static TheoryData<string, string> Examples() =>
        [.. from file in ExampleFiles from paper in TypedSheetOptions.PaperWords select (file, paper)];

    private static IEnumerable<string> ExampleFiles =>
        Directory.GetFiles(Repository.PathOf("examples"), "*.rig.yaml").Select(static path => Path.GetFileName(path)!).Order(StringComparer.Ordinal);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Examples_stand_soundly_on_both_sizes_of_paper(string file, string paper)
    {
        var figures = SheetFigures.Of(Example(file), TestContext.Current.CancellationToken);
        Assert.Null(TypedSheetOptions.Read(Options, new TypedSheet { Paper = paper }, out var options));
        var document = SheetBuilder.Build(figures, options, TestContext.Current.CancellationToken);
        PageAssert.IsSound(document);
        Assert.All(document.Pages, page => Assert.Equal(options.Paper, page.Size));
        AssertNamedOnce(figures.Rig, document);
    }

    /// <summary>500 rigs of every sort, sensible and not, with names that are long, of other scripts, or hostile.</summary>
    [Fact]
    public void Random_rigs_stand_soundly_on_paper() =>
        Gen.Select(WiredRigGen.Rig().Where(CanBeWritten), Gen.Int[0, Names.Length - 1].Array[12], Gen.Bool).Sample(
            static (rig, names, isLetter) =>
            {
                var named = Named(rig, names);
                var document = Set(named, Options with { Paper = isLetter ? PaperSize.Letter : PaperSize.A4, Prices = [] });
                PageAssert.IsSound(document);
                AssertNamedOnce(named, document);
            },
            iter: Rounds.Of(500),
            threads: 2);

    [Fact]
    public void Parts_are_set_as_asked_for_and_in_the_order_of_the_sheet()
    {
        var figures = SheetFigures.Of(Example("pit.rig.yaml"), TestContext.Current.CancellationToken);
        Assert.Null(TypedSheetOptions.Read(Options, new TypedSheet { Only = ["player", "feeds"], Paper = "letter", Labels = "30x12", Contact = "the workshop" }, out var options));
        var document = SheetBuilder.Build(figures, options, TestContext.Current.CancellationToken);
        Assert.Equal(["Feed schedule", "For the player"], HeadingsOf(document));
        Assert.Contains(TextsOf(document), static text => text == "the workshop");
        Assert.Equal(
            ["Single-line diagram", "Feed schedule", "Lead list", "Findings", "Switch-on", "For the player", "Labels"],
            HeadingsOf(SheetBuilder.Build(figures, Options, TestContext.Current.CancellationToken)));
    }

    public static TheoryData<string, TypedSheet, string> Mistyped() => new()
    {
        { "only", new TypedSheet { Only = ["feed"] }, "feed" },
        { "paper", new TypedSheet { Paper = "a3" }, "a3" },
        { "labels", new TypedSheet { Labels = "10x10" }, "10x10" },
        { "labels", new TypedSheet { Labels = "big" }, "big" },
        { "labels", new TypedSheet { Labels = "45x16x2" }, "45x16x2" },
        { "reels", new TypedSheet { Reels = ["25"] }, "25" },
        { "reels", new TypedSheet { Reels = ["25 m", "0 m"] }, "0 m" },
        { "reels", new TypedSheet { Reels = ["10 m x 0"] }, "10 m x 0" },
        { "reels", new TypedSheet { Reels = ["10001 m"] }, "10001 m" },
        { "ends", new TypedSheet { Ends = "40" }, "40" },
        { "cut", new TypedSheet { Cut = "-1 mm" }, "-1 mm" },
    };

    [Theory]
    [MemberData(nameof(Mistyped))]
    public void What_cannot_be_meant_is_told_with_what_is_expected(string option, TypedSheet typed, string found)
    {
        var problem = TypedSheetOptions.Read(Options, typed, out _);
        Assert.StartsWith($"{option}: expected ", problem, StringComparison.Ordinal);
        Assert.Contains($"found \"{found}\"", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Cable_is_cut_from_the_reels_that_there_are()
    {
        Assert.Null(TypedSheetOptions.Read(
            Options with { Only = [SheetPart.Leads] }, new TypedSheet { Reels = ["1.7 m x 1", "3 m"], Ends = "50 mm", Cut = "2 mm" }, out var options));
        var texts = string.Join(' ', TextsOf(Set(Example("pit.rig.yaml"), options)));

        // The pit rig's leads: a chain of 0.4 m and twice 0.15 m, and four of 0.5 m. 2.7 m of cable with 50 mm for each of seven stretches is 3.05 m.
        Assert.Contains("Cut list, 0.22 mm²", texts, StringComparison.Ordinal);
        Assert.Contains("3.05 m of 4.7 m are used", texts, StringComparison.Ordinal);
        Assert.Contains("no way of cutting leaves less: proven", texts, StringComparison.Ordinal);
        Assert.Contains("longer than its stretch by 50 mm for its two ends; a cut takes 2 mm", texts, StringComparison.Ordinal);
        Assert.DoesNotContain("Cut list", string.Join(' ', TextsOf(Set(Example("pit.rig.yaml"), Options))), StringComparison.Ordinal);
    }

    [Fact]
    public void What_no_reel_is_long_enough_for_is_said_and_not_cut()
    {
        Assert.Null(TypedSheetOptions.Read(Options with { Only = [SheetPart.Leads] }, new TypedSheet { Reels = ["300 mm x 1"] }, out var options));
        var texts = string.Join(' ', TextsOf(Set(Example("pit.rig.yaml"), options)));
        Assert.Contains("Longer than every reel, and not cut: lead 1, part 1: 0.44 m", texts, StringComparison.Ordinal);
        Assert.Contains("Not cut, for there are too few reels: lead 1, part", texts, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_stand_for_what_they_say()
    {
        Assert.Equal(Enum.GetNames<SheetPart>().Select(static name => name.ToLowerInvariant()), TypedSheetOptions.PartWords);
        Assert.Equal(PaperSize.All.Select(static paper => paper.Name.ToLowerInvariant()), TypedSheetOptions.PaperWords);
        Assert.Equal(Enum.GetNames<SheetFileKind>().Select(static name => name.ToLowerInvariant()), SheetFile.KindWords);
    }

    [Fact]
    public void The_version_follows_the_rig_and_not_how_its_file_is_written()
    {
        var text = File.ReadAllText(Repository.PathOf("examples/pit.rig.yaml"));
        var version = RigVersion.Of(Read(text));
        Assert.Matches("^[0-9a-f]{8}$", version);
        Assert.Equal(version, RigVersion.Of(Read(text.Replace("rig: Pit", "# another comment\nrig:   Pit", StringComparison.Ordinal))));
        Assert.NotEqual(version, RigVersion.Of(Read(text.Replace("30mA", "31mA", StringComparison.Ordinal))));
    }

    [Fact]
    public void The_player_is_told_what_a_lead_could_damage()
    {
        var rig = Read(
            """
            rig: r
            mains: 230 V 50 Hz
            loads:
              drive-3: 9V DC 12mA centre negative 5.5x2.1
              preamp-2: 18V DC 40mA centre negative 5.5x2.1
            supplies:
              brick: { label: "INPUT 100-240V~ 50/60Hz", isolated: true, outlets: { 1: 9V DC 100mA centre negative 5.5x2.1, 2: 18V DC 100mA centre negative 5.5x2.1 } }
            wired:
              - { from: brick/1, to: drive-3 }
              - { from: brick/2, to: preamp-2 }
            """);
        var texts = string.Join(' ', TextsOf(Set(rig, Options with { Only = [SheetPart.Player] })));
        Assert.Contains("Lead 2, from brick/2 (18 V ⎓): only for preamp-2. It can damage everything else here.", texts, StringComparison.Ordinal);
        Assert.DoesNotContain("Lead 1, from", texts, StringComparison.Ordinal);
        Assert.DoesNotContain("Do not switch this board on", texts, StringComparison.Ordinal);
    }

    /// <summary>An adaptor that shows no polarity, and one pedal more: nobody knows what a swap would do, nor whether it is safe as it is.</summary>
    [Fact]
    public void What_is_not_known_is_no_yes_for_the_player()
    {
        var rig = Read(
            """
            rig: r
            mains: 230 V 50 Hz
            loads:
              drive-3: 9V DC 12mA centre negative 5.5x2.1
              delay-2: 9V DC 20mA centre negative 5.5x2.1
            supplies:
              wall: { label: "OUTPUT 9V DC 1A 5.5x2.1" }
              brick: { label: "INPUT 100-240V~ 50/60Hz", outlets: { 1: 9V DC 100mA centre negative 5.5x2.1 } }
            wired:
              - { from: wall/1, to: drive-3 }
              - { from: brick/1, to: delay-2 }
            """);
        var figures = SheetFigures.Of(rig, TestContext.Current.CancellationToken);
        Assert.Equal(Core.Checks.Severity.Unsure, figures.Analysis.Check.Verdict);
        var texts = string.Join(' ', TextsOf(Set(rig, Options with { Only = [SheetPart.Player] })));
        Assert.Contains("Do not switch this board on yet", texts, StringComparison.Ordinal);
        Assert.Contains("not everything is known of what the leads give", texts, StringComparison.Ordinal);
        Assert.DoesNotContain("can damage another pedal of it", texts, StringComparison.Ordinal);
        Assert.DoesNotContain("into the wall", texts, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rig_that_would_do_harm_is_not_to_be_switched_on()
    {
        var texts = string.Join(' ', TextsOf(Set(Example("left-at-18.rig.yaml"), Options with { Only = [SheetPart.Player] })));
        Assert.Contains("Do not switch this board on yet", texts, StringComparison.Ordinal);
        Assert.DoesNotContain("into the wall", texts, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_that_nobody_would_read_is_not_printed_whole_and_that_is_said()
    {
        var name = string.Concat(Enumerable.Repeat("name ", 10_000));
        var rig = Read($"rig: r\nloads:\n  x: {{ name: \"{name}\", label: 9V 20mA }}\n");
        var document = Set(rig, Options);
        PageAssert.IsSound(document);
        Assert.InRange(document.Pages.Length, 1, 4);
        Assert.Contains("characters more)", string.Join(' ', TextsOf(document)), StringComparison.Ordinal);
        Assert.NotEqual(RigVersion.Of(rig), RigVersion.Of(rig with { Loads = [rig.Loads[0] with { Name = name[..^6] }] }));
    }

    [Fact]
    public void Characters_that_show_as_boxes_are_told_with_the_name_that_has_them()
    {
        Assert.Empty(SheetBuilder.MissingCharacters(Example("festival.rig.yaml")));
        var rig = Read("rig: Café 日本\nloads:\n  x: { name: 日本語, label: 9V 20mA }\n");
        Assert.Equal([("日", "Café 日本"), ("本", "Café 日本"), ("語", "日本語")], SheetBuilder.MissingCharacters(rig));
    }

    internal static PaperDocument Set(Rig rig, SheetOptions options) =>
        SheetBuilder.Build(SheetFigures.Of(rig, TestContext.Current.CancellationToken), options, TestContext.Current.CancellationToken);

    internal static Rig Example(string file) => Read(File.ReadAllText(Repository.PathOf($"examples/{file}")));

    internal static Rig Read(string yaml) => RigFileReader.Read(yaml, "test.rig.yaml").Rig ?? throw new InvalidOperationException("It is no rig.");

    internal static IEnumerable<string> TextsOf(PaperDocument document) =>
        document.Pages.SelectMany(static page => page.All()).SelectMany(static part => part.Shapes).OfType<TextShape>().Select(static text => text.Text);

    private static IEnumerable<string> HeadingsOf(PaperDocument document) =>
        document.Pages.SelectMany(static page => page.All()).Where(static part => part.Tag == PaperTag.Heading)
            .Select(static part => string.Join(' ', part.Shapes.OfType<TextShape>().Select(static text => text.Text)));

    /// <summary>The feed schedule names every outlet that is not joined to others, and every load, once in its own column.</summary>
    private static void AssertNamedOnce(Rig rig, PaperDocument document)
    {
        var rows = document.Pages.SelectMany(static page => page.All()).Where(static part => part.Tag == PaperTag.Table)
            .Where(static table => CellText(table.Parts[0], 3) == "Load" && CellText(table.Parts[0], 8) == "Measured")
            .SelectMany(static table => table.Parts.Skip(1)).ToList();
        var outlets = string.Join(' ', rows.Select(static row => CellText(row, 0))) + " ";
        var loads = rows.Select(static row => CellText(row, 3)).ToList();
        foreach (var outlet in rig.Supplies.Items.SelectMany(static supply => supply.Outlets.Items.Select(outlet => $"{supply.Id}/{outlet.Id}")))
            Assert.Contains(outlet, outlets, StringComparison.Ordinal);
        foreach (var load in rig.Loads.Items.Where(load => rig.Wired?.Items.Count(feed => feed.To.Contains(load.Id)) is null or <= 1))
            Assert.Single(loads, text => text == load.Id || text.StartsWith(load.Id + " ", StringComparison.Ordinal));
    }

    private static string CellText(PaperPart row, int column)
    {
        var cells = row.Parts.Where(static part => part.Tag is PaperTag.HeaderCell or PaperTag.Cell).ToList();
        return column >= cells.Count ? "" : string.Join(' ', cells[column].Shapes.OfType<TextShape>().Select(static text => text.Text));
    }

    /// <summary>Whether it is a rig that a file can hold: all others are nobody's.</summary>
    private static bool CanBeWritten(Rig rig)
    {
        try
        {
            return RigFileWriter.Write(rig).Length > 0;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    private static Rig Named(Rig rig, int[] names)
    {
        var next = 0;
        return rig with
        {
            Name = Names[names[0]] is { Length: > 0 } name ? name : "r",
            Loads = [.. rig.Loads.Items.Select(load => load with { Name = Next() })],
            Supplies = [.. rig.Supplies.Items.Select(supply => supply with { Name = Next() })],
        };

        string? Next() => Names[names[next++ % names.Length]] is { Length: > 0 } text ? text : null;
    }
}
