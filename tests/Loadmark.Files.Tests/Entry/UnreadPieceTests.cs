using Loadmark.Core.Nameplates;
using Loadmark.Files.Entry;

namespace Loadmark.Files.Tests.Entry;

/// <summary>Pieces of labels that were not read go where their owner says, and no figure changes with them.</summary>
public sealed class UnreadPieceTests
{
    private static readonly EntryTarget Loads = new(EntryKind.Loads, ["here"]);

    [Fact]
    public void A_name_becomes_the_tag_that_was_only_proposed() =>
        Assert.Equal(("treble mender", null, "18V 40 mA", false), Settled("18V 40 mA treble mender", UnreadMeaning.Name));

    [Fact]
    public void A_tag_that_was_typed_stays() =>
        Assert.Equal(("drive-3", "treble mender", "18V 40 mA", false), Settled("drive-3: 18V 40 mA treble mender", UnreadMeaning.Name));

    [Fact]
    public void A_name_that_something_else_has_is_no_tag() =>
        Assert.Equal(("L-01", "here", "18V 40 mA", true), Settled("18V 40 mA here", UnreadMeaning.Name));

    [Fact]
    public void Two_things_of_one_name_do_not_get_one_tag()
    {
        var read = LabelLines.Read("9V 3mA sparkling\n9V 5mA sparkling", Loads);
        var rows = UnreadPiece.Settle(read, Loads, new Dictionary<string, UnreadMeaning> { ["sparkling"] = UnreadMeaning.Name }).Rows;
        Assert.Equal([("sparkling", null), ("L-02", "sparkling")], rows.Select(static row => (row.Load!.Id, row.Load.Name)));
    }

    /// <summary>Without the word between them the two voltages are one choice of two.</summary>
    [Fact]
    public void A_piece_that_parts_two_figures_cannot_leave()
    {
        var load = LabelLines.Read("drive-3: 9V lamp 12V 100mA", Loads).Rows[0].Load!;
        Assert.False(UnreadPiece.CanLeave(load.Label, "lamp"));
        Assert.Same(load, UnreadPiece.Settle(load, "lamp", UnreadMeaning.Nothing));
    }

    [Fact]
    public void A_drawing_that_was_not_understood_leaves_when_its_owner_says_that_it_is_a_name()
    {
        var reading = NameplateReader.Read("9V 5mA tip top");
        Assert.NotEmpty(reading.Unread);
        Assert.Equal(LabelTopics.None, LabelTrim.WithoutUnread(reading, reading.Unread[0].Text)?.NotUnderstood);
    }

    private static (string Id, string? Name, string Label, bool IsProposed) Settled(string line, UnreadMeaning meaning)
    {
        var read = LabelLines.Read(line, Loads);
        var piece = read.Rows[0].Label!.Unread[0].Text;
        var row = UnreadPiece.Settle(read, Loads, new Dictionary<string, UnreadMeaning> { [piece] = meaning }).Rows[0];
        return (row.Load!.Id, row.Load.Name, row.Load.Label!.Text, row.IsIdProposed);
    }
}
