using CsCheck;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Tests.Nameplates;

public sealed class NameplatePropertyTests
{
    [Fact]
    public void Every_character_lies_in_exactly_one_piece_or_is_unread() =>
        LabelPieces.AnyText.Sample(Coverage.Check, iter: Rounds.Of(20_000));

    [Fact]
    public void Written_readings_read_back_the_same() =>
        LabelPieces.Label.Sample(
            label =>
            {
                var first = NameplateReader.Read(label);

                // A figure that can be taken in two ways cannot be written in one; what depends on it differs.
                if (first.AmbiguousAmps.State == FieldState.Ambiguous || first.AmbiguousWatts.State == FieldState.Ambiguous || first.AmbiguousVolts.State == FieldState.Ambiguous)
                    return;

                // Nor can figures of outlets without their voltage, nor an input beside an output that was not read.
                if (first.Outlets.Any(group => group.Modes.Any(mode => mode.VoltsPlace is null)) || (first.Input is not null && first.Outlets.IsEmpty && !first.Modes.Any(mode => mode.VoltsPlace is not null)))
                    return;

                // What stands at the end of a label is the whole label's: it cannot be said of the last outlets alone.
                if (first.Outlets is [.., var last] && (last.Polarity.State != FieldState.Absent || last.Form.State != FieldState.Absent || last.Isolated.State != FieldState.Absent))
                    return;
                var text = NameplateWriter.Write(first);
                var second = NameplateReader.Read(text);
                Assert.True(SameReading(first, second), $"{label}\n{NameplateText.Of(first)}\n{text}\n{NameplateText.Of(second)}");
                Assert.Equal(text, NameplateWriter.Write(second));
            },
            iter: Rounds.Of(40_000));

    /// <summary>Found by the property above: alternating current said of the label and of one outlet, direct current of another.</summary>
    [Fact]
    public void Outlets_of_both_kinds_of_current_read_back_beside_a_label_that_says_one_of_them()
    {
        var first = NameplateReader.Read("AC; OUTPUT A: 9V DC 0.1A; OUTPUT B: 9V AC 0.1A; OUTPUT C: 9V 0.1A");
        Assert.Equal([SupplyForm.Direct, SupplyForm.Alternating, null], first.Outlets.Select(group => group.Form.State == FieldState.Absent ? (SupplyForm?)null : group.Form.Value));
        Assert.Equal(SupplyForm.Alternating, first.Form.Value);
        var second = NameplateReader.Read(NameplateWriter.Write(first));
        Assert.True(SameReading(first, second), $"{NameplateWriter.Write(first)}\n{NameplateText.Of(second)}");
    }

    [Fact]
    public void White_space_of_any_kind_reads_the_same() =>
        LabelPieces.Label.Sample(
            label =>
            {
                var spaced = label.Replace(' ', '\u00A0');
                Assert.Equal(NameplateText.Of(NameplateReader.Read(label), withUnread: false), NameplateText.Of(NameplateReader.Read(spaced), withUnread: false));
            },
            iter: Rounds.Of(5_000));

    /// <summary>Equal in all that the writer writes: not where things stand, nor what was ambiguous among figures.</summary>
    private static bool SameReading(Nameplate first, Nameplate second) =>
        first.Form.State == second.Form.State && first.Form.Value == second.Form.Value
        && first.Polarity.State == second.Polarity.State && first.Polarity.Value == second.Polarity.Value
        && first.Plug.State == second.Plug.State && first.Plug.Candidates.SequenceEqual(second.Plug.Candidates) && first.Plug.Value == second.Plug.Value
        && first.Regulated.State == second.Regulated.State && first.Regulated.Value == second.Regulated.Value
        && (first.Mains is { } mains ? mains with { Place = default } : null) == (second.Mains is { } other ? other with { Place = default } : null)
        && first.Modes.Select(WithoutPlaces).SequenceEqual(second.Modes.Select(WithoutPlaces))
        && first.Outlets.Select(WithoutPlaces).SequenceEqual(second.Outlets.Select(WithoutPlaces)) && first.EachOutlet == second.EachOutlet
        && first.Total == second.Total && WithoutPlaces(first.Input) == WithoutPlaces(second.Input)
        && first.Ground.State == second.Ground.State && first.Ground.Value == second.Ground.Value
        && first.Isolated.State == second.Isolated.State && first.Isolated.Value == second.Isolated.Value
        && first.NotUnderstood == second.NotUnderstood
        && first.Derived.SequenceEqual(second.Derived);

    private static string WithoutPlaces(PrintedOutlets group) => NameplateText.Of(group);

    private static LowVoltageInput? WithoutPlaces(LowVoltageInput? input) =>
        input is null ? null : input with { Place = default, Form = input.Form.Value is { } form ? Field<SupplyForm>.Read(form, default) : default };

    private static Mode WithoutPlaces(Mode mode) => mode with { VoltsPlace = null, AmpsPlace = null, WattsPlace = null };
}
