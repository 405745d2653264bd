using Loadmark.Core.Rigs;
using Loadmark.Reference.Figures;
using Loadmark.Reference.Laws;

namespace Loadmark.Reference.Wires;

/// <summary>Plain copper against the most that IEC 60228 lets a conductor have.</summary>
public sealed class CopperTests
{
    private const decimal Copper = 1.7241e-8m;

    public static IEnumerable<TheoryDataRow<string>> Areas() => ReferenceTable.Read("conductor_iec60228")
        .Select(row => new TheoryDataRow<string>(row["area_mm2"])
        {
            TestDisplayName = row.Has("class2_plain_max_ohm_per_km_20C")
                ? $"{row["area_mm2"]} mm² [IEC 60228:2004 tables 1 to 3]"
                : $"{row["area_mm2"]} mm² [below IEC 60228: a cable maker's list, DIN VDE 0295]",
        });

    [Fact]
    [Trait("Source", "IEC 60028: 58 MS/m")]
    public void Resistivity_is_that_of_standard_annealed_copper() =>
        Printed.Agrees(Copper, 1e-6m / ReferenceTable.Row("copper_constants", "quantity", "conductivity 100 % IACS").Number("value"), "IEC 60028");

    /// <summary>
    /// Compared: ρ·L/A of one kilometre of plain copper of the nominal area, at 20 °C, with the greatest resistance the
    /// class allows. Copper as sold has no less than its nominal area in effect, so the computed value lies below the
    /// maximum; and not far below, or area or resistivity would be wrong.
    /// </summary>
    [Theory]
    [MemberData(nameof(Areas))]
    [Trait("Source", "IEC 60228:2004 classes 2 and 5; below 0.5 mm² a cable maker's list")]
    public void Computed_resistance_lies_below_the_class_maximum_and_near_it(string area)
    {
        var row = ReferenceTable.Row("conductor_iec60228", "area_mm2", area);
        Assert.True(row.WasRead);
        Assert.True(QuantityReader.TryRead<SquareMetre>($"{area} mm²", out var read, out var problem), problem);
        var computed = Networks.Conductor(Copper, new Metres(1000), Wire.OfArea(read).Area).Value;

        foreach (var column in new[] { "class2_plain_max_ohm_per_km_20C", "class5_plain_max_ohm_per_km_20C" })
        {
            if (row.Has(column))
                Assert.InRange(computed / row.Number(column), 0.80m, 0.97m);
        }
    }
}
