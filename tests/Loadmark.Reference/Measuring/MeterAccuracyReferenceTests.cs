using Loadmark.Core.Readings;
using Loadmark.Reference.Figures;

namespace Loadmark.Reference.Measuring;

/// <summary>Bands of readings as makers of meters and a university's lesson print them.</summary>
[Trait("Source", "meter_accuracy.csv")]
public sealed class MeterAccuracyReferenceTests
{
    public static TheoryData<int> Rows() => [.. Enumerable.Range(0, ReferenceTable.Read("meter_accuracy").Count)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_band_is_the_published_one(int place)
    {
        var row = ReferenceTable.Read("meter_accuracy")[place];
        Assert.True(DisplayedValueReader.TryRead<Volt>(row["reading"], out var reading, out var problem), problem);
        Assert.True(PrintedAccuracyReader.TryRead<Volt>(row["accuracy"], out var accuracy, out var fault), $"{fault}");

        // The last digit as it is printed is that of the reading as it is typed.
        Assert.True(QuantityReader.TryRead<Volt>(row["last_digit"].EndsWith('V') ? row["last_digit"] : row["last_digit"] + " V", out var step, out problem), problem);
        Assert.Equal(step, reading.Step);
        var band = accuracy.Within(reading.Value, reading.Step)!.Value;
        Assert.Equal(row.Number("recomputed"), band.Value);
        if (row["published_band"].Split(' ')[0].Split('-') is [var low, var high])
        {
            Printed.Within(Printed.HalfUnit(decimal.Parse(low)), decimal.Parse(low), (reading.Value - band).Value, row["source"]);
            Printed.Within(Printed.HalfUnit(decimal.Parse(high)), decimal.Parse(high), (reading.Value + band).Value, row["source"]);
        }
        else
        {
            Printed.Agrees(decimal.Parse(row["published_band"].Split(' ')[0]), band.Value, row["source"]);
        }
    }

    [Fact]
    public void Some_publish_both_ends_and_some_the_half_width()
    {
        var ends = ReferenceTable.Read("meter_accuracy").Count(static row => row["published_band"].Split(' ')[0].Contains('-'));
        Assert.Equal(4, ends);
        Assert.Equal(7, ReferenceTable.Read("meter_accuracy").Count);
    }
}
