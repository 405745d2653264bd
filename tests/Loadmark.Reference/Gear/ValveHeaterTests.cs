using Loadmark.Reference.Figures;

namespace Loadmark.Reference.Gear;

/// <summary>
/// A double valve's two heaters in series and side by side, as the data sheets print both: the same power, four times
/// the resistance. Only rows that were read; the figures from memory in the same table are not asserted.
/// </summary>
[Trait("Source", "12AX7 data sheet as quoted by Wikipedia; 12BH7, tubeofile.com")]
public sealed class ValveHeaterTests
{
    public static IEnumerable<TheoryDataRow<string, string>> Valves() =>
    [
        new("12AX7 / ECC83", "1.89") { TestDisplayName = "12AX7 [data sheet as quoted by Wikipedia]" },
        new("12BH7", "3.78") { TestDisplayName = "12BH7 [tubeofile.com]" },
    ];

    [Theory]
    [MemberData(nameof(Valves))]
    public void Heaters_take_the_same_power_both_ways(string type, string watts)
    {
        var series = Row(type, "series");
        var parallel = Row(type, "parallel");

        Assert.Equal(new Watts(decimal.Parse(watts)), VoltsOf(series) * AmpsOf(series));
        Assert.Equal(new Watts(decimal.Parse(watts)), VoltsOf(parallel) * AmpsOf(parallel));
        Assert.Equal(AmpsOf(series), new Watts(decimal.Parse(watts)) / VoltsOf(series));
        Assert.Equal(4m, VoltsOf(series) / AmpsOf(series) / (VoltsOf(parallel) / AmpsOf(parallel)));
    }

    private static ReferenceRow Row(string type, string connection)
    {
        var row = ReferenceTable.Read("valve_heaters").Single(row => row["type"] == type && row["connection"] == connection);
        Assert.True(row.WasRead, $"{type} is from memory.");
        return row;
    }

    private static Volts VoltsOf(ReferenceRow row) => new(row.Number("V"));

    private static Amps AmpsOf(ReferenceRow row)
    {
        Assert.True(QuantityReader.TryRead<Ampere>($"{row["mA"]} mA", out var amps, out var problem), problem);
        return amps;
    }
}
