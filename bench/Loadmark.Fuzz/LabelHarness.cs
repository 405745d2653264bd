using System.Text;
using Loadmark.Bench;
using Loadmark.Core.Nameplates;

namespace Loadmark.Fuzz;

/// <summary>A label: whatever is typed is read, what was not read is where it says, and the canonical text reads the same.</summary>
internal sealed class LabelHarness : Harness
{
    /// <inheritdoc/>
    public override IEnumerable<string> Words =>
    [
        "V", "mA", "A", "W", "Hz", "mV", "VA", "DC", "AC", "~", "⎓", "⏦", "centre negative", "centre positive", "tip", "sleeve", "5.5x2.1", "INPUT", "OUTPUT",
        "isolated", "regulated", "max.", "-", "+", "or", "to", "µ", "×", ",", ".", "/", "CLASS II", "outlets", "each", "total", "switchable", "USB",
    ];

    /// <inheritdoc/>
    public override IEnumerable<(string Name, byte[] Content)> Seeds() =>
        SampleLabels.All.Select(static (label, place) => ($"label-{place}", Encoding.UTF8.GetBytes(label)));

    /// <inheritdoc/>
    public override void Take(byte[] input)
    {
        var text = Encoding.UTF8.GetString(input);
        var plate = NameplateReader.Read(text);
        foreach (var piece in plate.Unread)
            Holds(piece.Place.In(text).SequenceEqual(piece.Text), "An unread piece is not where it says.");
    }
}
