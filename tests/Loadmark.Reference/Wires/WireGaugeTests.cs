using System.Globalization;
using Loadmark.Core.Rigs;
using Loadmark.Reference.Figures;
using Loadmark.Reference.Laws;

namespace Loadmark.Reference.Wires;

/// <summary>American wire gauge numbers against printed diameters, circular mils, areas and resistances.</summary>
public sealed class WireGaugeTests
{
    /// <summary>Resistivity of standard annealed copper at 20 °C in Ω·m (IEC 60028: 1/58 Ω·mm²/m).</summary>
    private const decimal Copper = 1.7241e-8m;

    private const decimal Inch = 0.0254m;

    private const decimal Foot = 0.3048m;

    private const decimal QuarterPi = 0.785398163397448m;

    /// <summary>
    /// The tables were computed from diameters of four or five digits and rounded again, so that besides half a unit of
    /// the last digit they are up to 0.3 parts in 10 000 off (AWG 30; circular mils of AWG 22 by one in a million).
    /// </summary>
    private const decimal TableRounding = 0.0001m;

    /// <summary>The tables' metric columns are their foot columns times 3.28, and rounded again: up to 7 parts in 10 000.</summary>
    private const decimal MetricRounding = 0.001m;

    public static IEnumerable<TheoryDataRow<int>> Gauges() => ReferenceTable.Read("conductor_awg")
        .Select(row => new TheoryDataRow<int>(int.Parse(row["awg"])));

    [Theory]
    [MemberData(nameof(Gauges))]
    [Trait("Source", "ASTM B258 diameter law, as printed by cmcorporation.com")]
    public void Area_is_that_of_the_diameter_law(int gauge)
    {
        var row = RowOf(gauge);
        Printed.Agrees(row.Number("formula_area_mm2"), Millimetres(gauge), "diameter law");
    }

    [Theory]
    [MemberData(nameof(Gauges))]
    [Trait("Source", "Kuphaldt, Lessons in Electric Circuits vol. I ch. 12 and vol. V")]
    public void Area_is_that_of_the_printed_circular_mils(int gauge)
    {
        var mil = Inch / 1000;
        var computed = WireGauge.Area(gauge).Value / (QuarterPi * mil * mil);
        Near(RowOf(gauge), "kuphaldt_cmil", computed, TableRounding);
    }

    [Theory]
    [MemberData(nameof(Gauges))]
    [Trait("Source", "Kuphaldt, Lessons in Electric Circuits vol. I ch. 12 and vol. V")]
    public void Area_is_that_of_the_printed_diameter(int gauge)
    {
        var computed = (decimal)Math.Sqrt((double)(WireGauge.Area(gauge).Value / QuarterPi)) / Inch;
        Printed.Agrees(RowOf(gauge).Number("kuphaldt_d_inch"), computed, "Kuphaldt, inches");
    }

    [Theory]
    [MemberData(nameof(Gauges))]
    [Trait("Source", "IEC 60028 resistivity; cirris.com and wp.1728.org tables")]
    public void Resistance_is_that_of_the_printed_tables(int gauge)
    {
        var row = RowOf(gauge);
        var thousandFeet = Networks.Conductor(Copper, new Metres(1000 * Foot), WireGauge.Area(gauge)).Value;
        var kilometre = Networks.Conductor(Copper, new Metres(1000), WireGauge.Area(gauge)).Value;

        Near(row, "t1728_ohm_per_1000ft", thousandFeet, TableRounding);
        Near(row, "t1728_ohm_per_km", kilometre, MetricRounding);
        if (gauge == 21) // the table's row 21 is a misprinted copy of row 25
            return;
        Near(row, "cirris_ohm_per_1000ft", thousandFeet, TableRounding);
        Near(row, "cirris_ohm_per_km", kilometre, MetricRounding);
    }

    [Fact]
    [Trait("Source", "ASTM B258 as printed by cmcorporation.com: AWG 36 is 0.0050 in, one step is a ratio of 1.12293")]
    public void Gauge_36_is_five_mils_and_a_step_is_the_printed_ratio()
    {
        var mil = Inch / 1000;
        Printed.Agrees(25.00m, WireGauge.Area(36).Value / (QuarterPi * mil * mil), "AWG 36 in circular mils");

        for (var gauge = WireGauge.Thickest; gauge < 36; gauge++)
            Printed.Agrees(1.1229m, (decimal)Math.Sqrt((double)(WireGauge.Area(gauge) / WireGauge.Area(gauge + 1))), $"AWG {gauge}");
    }

    [Theory]
    [MemberData(nameof(Gauges))]
    [Trait("Source", "Kuphaldt, Lessons in Electric Circuits vol. I ch. 12; round trip through the program's text")]
    public void Area_is_written_in_mm2_and_read_back(int gauge)
    {
        var area = Wire.OfGauge(gauge).Area;
        Assert.True(QuantityReader.TryRead<SquareMetre>(area.ToExactString(), out var read, out var problem), problem);
        Assert.Equal(area, read);

        var printed = RowOf(gauge).Number("formula_area_mm2").ToString(CultureInfo.InvariantCulture);
        foreach (var unit in new[] { " mm²", "mm2", " mm^2", " sq mm" })
        {
            Assert.True(QuantityReader.TryRead<SquareMetre>(printed + unit, out var typed, out problem), problem);
            Printed.Agrees(decimal.Parse(printed), typed.Value * 1e6m, "as typed");
            Assert.Equal(typed, Wire.OfArea(typed).Area);
        }
    }

    private static ReferenceRow RowOf(int gauge) =>
        ReferenceTable.Row("conductor_awg", "awg", gauge.ToString(CultureInfo.InvariantCulture));

    private static decimal Millimetres(int gauge) => WireGauge.Area(gauge).Value * 1e6m;

    private static void Near(ReferenceRow row, string column, decimal computed, decimal share)
    {
        var printed = row.Number(column);
        Printed.Within(Printed.HalfUnit(printed) + (printed * share), printed, computed, column);
    }
}
