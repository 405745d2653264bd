using CsCheck;
using Loadmark.Core.Readings;

namespace Loadmark.Core.Tests.Readings;

/// <summary>Against the worked examples of JCGM 100:2008 (GUM). Its numbers stand here from memory; each is checked by its own arithmetic.</summary>
public sealed class DrawEstimateTests
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 26, 12, 0, 0, TimeSpan.Zero);

    /// <summary>GUM annex H.2, table H.2: five readings of a current in mA; mean 19.6610 mA, standard deviation of the mean 0.0095 mA.</summary>
    [Fact]
    public void The_current_of_annex_H_2()
    {
        var draw = Of(0.019663m, 0.019639m, 0.019640m, 0.019685m, 0.019678m);
        Assert.Equal(0.0196610m, draw.Mean.Value);
        Assert.Equal(0.0095e-3, draw.FromScatter!.Value, 0.00005e-3);
        Assert.Equal(draw.FromScatter, draw.Uncertainty);
        Assert.Null(draw.FromMeter);
        Assert.Equal(0.0196610m, draw.Figure.Value);
    }

    /// <summary>GUM 4.4.3, table 1: twenty readings (there of a temperature, in °C); mean 100.145, s 1.489, s/√20 0.333.</summary>
    [Fact]
    public void The_twenty_readings_of_table_1()
    {
        decimal[] readings =
        [
            96.90m, 98.18m, 98.25m, 98.61m, 99.03m, 99.49m, 99.56m, 99.74m, 99.89m, 100.07m,
            100.33m, 100.42m, 100.68m, 100.95m, 101.11m, 101.20m, 101.57m, 101.84m, 102.36m, 102.72m,
        ];
        var draw = Of(readings);
        Assert.Equal(100.145m, draw.Mean.Value);
        Assert.Equal(1.489, draw.Deviation!.Value, 0.0005);
        Assert.Equal(0.333, draw.FromScatter!.Value, 0.0005);
        Assert.Empty(draw.LeftOut);

        // GUM 7.2.6: no more digits than two of the uncertainty.
        Assert.Equal(100.15m, draw.Figure.Value);
    }

    /// <summary>
    /// GUM 4.3.7 and 5.1.5: a meter that may be off by 14·10⁻⁶ of the reading and 2·10⁻⁶ of a range of 1; mean 0.928571, from the
    /// scatter 12·10⁻⁶; half-width 15·10⁻⁶, over √3 8.7·10⁻⁶; together 15·10⁻⁶.
    /// </summary>
    [Fact]
    public void The_meter_of_4_3_7()
    {
        var meter = new MeterAccuracy(14e-6m, new Amps(2e-6m));
        var draw = DrawEstimate.Of([Reading(0.928583m, meter), Reading(0.928559m, meter)], DrawKind.Running)!;
        Assert.Equal(0.928571m, draw.Mean.Value);
        Assert.Equal(15e-6, (double)meter.Within(draw.Mean).Value, 0.05e-6);
        Assert.Equal(12e-6, draw.FromScatter!.Value, 0.05e-6);
        Assert.Equal(8.7e-6, draw.FromMeter!.Value, 0.05e-6);
        Assert.Equal(15e-6, draw.Uncertainty!.Value, 0.5e-6);
    }

    /// <summary>GUM 5.2.2, note 1: what is off together is not averaged away.</summary>
    [Fact]
    public void More_readings_of_one_meter_do_not_make_it_better()
    {
        var meter = new MeterAccuracy(0.01m, new Amps(0.002m));
        var (one, many) = (DrawEstimate.Of([Reading(0.2m, meter)], DrawKind.Running)!, DrawEstimate.Of(Enumerable.Repeat(Reading(0.2m, meter), 100), DrawKind.Running)!);
        Assert.Equal(0.004 / Math.Sqrt(3), one.FromMeter!.Value, 12);
        Assert.Equal(one.FromMeter.Value, many.FromMeter!.Value, 12);
        Assert.Equal(0, many.FromScatter);
        Assert.Null(one.FromScatter);
    }

    [Fact]
    public void An_outlier_is_left_out_and_shown_and_the_kinds_are_apart()
    {
        DrawReading[] readings =
        [
            Reading(0.210m), Reading(0.212m), Reading(2.11m), Reading(0.211m), Reading(0.209m), Reading(0.213m),
            Reading(0.52m) with { Kind = DrawKind.Starting, Duration = new Seconds(1.5m) },
            Reading(0.53m) with { Kind = DrawKind.Starting, Duration = new Seconds(1.2m) },
        ];
        var run = DrawEstimate.Of(readings, DrawKind.Running)!;
        Assert.Equal([2], run.LeftOut);
        Assert.Equal((6, 5, 0.211m), (run.Count, run.Counted, run.Mean.Value));
        Assert.Equal(
            "mean of 5 readings; 1 left out as too far from the rest; from 209 mA to 213 mA; standard uncertainty at least 710 µA, from the readings; the meter's accuracy is not known",
            DrawEstimate.Explain(run));
        var start = DrawEstimate.Of(readings, DrawKind.Starting)!;
        Assert.Equal((0.525m, 1.5m), (start.Figure.Value, start.Duration!.Value.Value));
        Assert.EndsWith("too few readings to tell whether one of them is wrong (that takes 5)", DrawEstimate.Explain(start), StringComparison.Ordinal);
        Assert.Null(DrawEstimate.Of(readings[..6], DrawKind.Starting));
    }

    [Fact]
    public void Says_what_is_not_known()
    {
        Assert.Equal("one reading; how sure it is cannot be told: the meter's accuracy is not known, and one reading does not tell how much it varies", DrawEstimate.Explain(Of(0.21m)));
        var meter = new MeterAccuracy(0.01m, new Amps(0.002m));
        Assert.Equal("one reading; standard uncertainty at least 2.4 mA, from the meter; one reading does not tell how much it varies", DrawEstimate.Explain(DrawEstimate.Of([Reading(0.21m, meter)], DrawKind.Running)!));
        Assert.Equal(
            "mean of 2 readings; from 210 mA to 214 mA; standard uncertainty 3.1 mA (readings 2 mA, meter 2.4 mA); too few readings to tell whether one of them is wrong (that takes 5)",
            DrawEstimate.Explain(DrawEstimate.Of([Reading(0.21m, meter), Reading(0.214m, meter)], DrawKind.Running)!));
    }

    [Fact]
    public void The_figure_lies_among_the_readings_and_within_its_uncertainty_of_their_mean() =>
        Gen.Select(Gen.Int[1, 999_999].Select(value => value * 1e-6m), Gen.Int[0, 1000]).Array[1, 12].Sample(all =>
        {
            var draw = DrawEstimate.Of(all.Select(one => Reading(one.Item1, new MeterAccuracy(one.Item2 * 1e-5m, new Amps(1e-4m)))), DrawKind.Running)!;
            Assert.InRange(draw.Mean.Value, draw.Least.Value - 1e-20m, draw.Most.Value + 1e-20m);
            Assert.InRange((double)Math.Abs(draw.Figure.Value - draw.Mean.Value), 0, draw.Uncertainty!.Value);
            Assert.True(draw.Uncertainty >= draw.FromMeter);
        });

    [Theory]
    [InlineData("1 % + 2 mA", "0.01", "0.002")]
    [InlineData("± 1,5% + 3 counts of 0.1 mA", "0.015", "0.0003")]
    [InlineData("2 mA", "0", "0.002")]
    [InlineData("0.5 %", "0.005", "0")]
    [InlineData("5 digits of 1 mA + 0.8 %", "0.008", "0.005")]
    public void Reads_accuracy_as_it_is_typed(string text, string share, string plus)
    {
        Assert.True(MeterAccuracyReader.TryRead(text, out var accuracy, out var problem), problem);
        Assert.Equal(new MeterAccuracy(decimal.Parse(share), new Amps(decimal.Parse(plus))), accuracy);
        Assert.True(MeterAccuracyReader.TryRead($"{accuracy}", out var again, out problem), problem);
        Assert.Equal(accuracy, again);
    }

    [Theory]
    [InlineData("", "it is empty")]
    [InlineData("good", "it does not start with a number")]
    [InlineData("1", "the unit is missing (A)")]
    [InlineData("100 %", "'100 %' is not a share of the reading such as 1 %")]
    [InlineData("-1 %", "'-1 %' is not a share of the reading such as 1 %")]
    [InlineData("1 % + 3 counts", "say what a count is, such as 3 counts of 0.1 mA")]
    [InlineData("60 % + 60 %", "the shares come to 100 % or more")]
    public void Refuses_what_is_no_accuracy(string text, string expected)
    {
        Assert.False(MeterAccuracyReader.TryRead(text, out _, out var problem));
        Assert.Equal(expected, problem);
    }

    private static MeasuredDraw Of(params decimal[] amps) => DrawEstimate.Of(amps.Select(value => Reading(value)), DrawKind.Running)!;

    private static DrawReading Reading(decimal amps, MeterAccuracy? meter = null) => new() { Current = new Amps(amps), Meter = meter, Taken = Noon };
}
