using CsCheck;
using Loadmark.Core.Acceptance;
using Loadmark.Core.Readings;

namespace Loadmark.Core.Tests.Acceptance;

public sealed class GuardBandTests
{
    private static readonly GuardBand Usual = new();
    private static readonly Gen<decimal> Volts3 = Gen.Int[-20_000, 20_000].Select(static millivolts => millivolts / 1000m);
    private static readonly Gen<decimal> Band = Gen.Int[0, 3000].Select(static millivolts => millivolts / 1000m);

    [Theory]
    [InlineData(9.0, 0.1, Conformity.Pass)]
    [InlineData(8.9, 0.1, Conformity.Pass)]
    [InlineData(8.899, 0.1, Conformity.NotSure)]
    [InlineData(8.8, 0.1, Conformity.NotSure)]
    [InlineData(8.7, 0.1, Conformity.NotSure)]
    [InlineData(8.699, 0.1, Conformity.Fail)]
    [InlineData(9.301, 0.1, Conformity.Fail)]
    [InlineData(9.0, 0.201, Conformity.NotSure)]
    [InlineData(8.8, 0.0, Conformity.Pass)]
    [InlineData(8.799, 0.0, Conformity.Fail)]
    public void Limits_move_inwards_to_pass_and_outwards_to_fail(double volts, double expanded, Conformity expected)
    {
        var judged = Usual.Judge<Volt>(new Volts(8.8m), new Volts(9.2m), new Volts((decimal)volts), new Volts((decimal)expanded));
        Assert.Equal(expected, judged.Judged);
        Assert.Equal((decimal)expanded, judged.GuardBand!.Value.Value);
    }

    [Fact]
    public void What_is_not_known_is_not_sure()
    {
        Assert.Equal(
            new ConformityJudgement<Volt>(Conformity.NotSure, null, null), Usual.Judge<Volt>(new Volts(8.8m), new Volts(9.2m), new Volts(9), Usual.Expanded<Volt>(null)));
        Assert.Equal(0.2m, Usual.Expanded<Volt>(0.1)!.Value.Value);
    }

    [Fact]
    public void An_open_side_has_no_limit()
    {
        Assert.Equal(Conformity.Pass, Usual.Judge<Volt>(new Volts(8.8m), null, new Volts(500), new Volts(0.1m)).Judged);
        Assert.Equal(Conformity.Pass, Usual.Judge<Volt>(null, new Volts(9.2m), new Volts(-500), new Volts(0.1m)).Judged);
        Assert.Equal(Conformity.Fail, Usual.Judge<Volt>(null, new Volts(9.2m), new Volts(500), new Volts(0.1m)).Judged);
    }

    [Fact]
    public void What_makes_no_sense_is_refused()
    {
        Assert.Throws<ArgumentException>(static () => Usual.Judge<Volt>(null, null, new Volts(9), new Volts(0.1m)));
        Assert.Throws<ArgumentException>(static () => Usual.Judge<Volt>(new Volts(9.2m), new Volts(8.8m), new Volts(9), new Volts(0.1m)));
        Assert.Throws<ArgumentException>(static () => Usual.Judge<Volt>(new Volts(8.8m), null, new Volts(9), new Volts(-0.1m)));
        Assert.Throws<ArgumentException>(static () => (Usual with { Multiplier = -1 }).Judge<Volt>(new Volts(8.8m), null, new Volts(9), new Volts(0.1m)));
        Assert.Throws<ArgumentException>(static () => (Usual with { CoverageFactor = 0 }).Judge<Volt>(new Volts(8.8m), null, new Volts(9), new Volts(0.1m)));
    }

    /// <summary>Whatever value the meter's band allows, it is within the limits where the reading passes, and outside where it fails.</summary>
    [Fact]
    public void Pass_is_never_said_of_what_may_be_outside_nor_fail_of_what_may_be_inside() =>
        Gen.Select(Volts3, Band, Volts3, Gen.Int[0, 20], Gen.Int[0, 30], Gen.Double[-1, 1]).Sample(static (low, width, reading, promille, digits, where) =>
        {
            var accuracy = new PrintedAccuracy<Volt>(promille / 1000m, 0, digits, Volts.Zero);
            var step = new Volts(0.01m);
            var judged = Usual.Judge<Volt>(
                new Volts(low), new Volts(low + width), new Volts(reading), Usual.Expanded<Volt>(accuracy.StandardUncertainty(new Volts(reading), step)));
            var truth = reading + ((decimal)where * accuracy.Within(new Volts(reading), step)!.Value.Value);
            var isWithin = truth >= low && truth <= low + width;
            Assert.True(judged.Judged != Conformity.Pass || isWithin);
            Assert.True(judged.Judged != Conformity.Fail || !isWithin);
        }, iter: 20_000);

    [Fact]
    public void A_wider_uncertainty_only_makes_less_sure() =>
        Gen.Select(Volts3, Band, Volts3, Band, Band).Sample(static (low, width, reading, narrow, more) =>
        {
            var (before, after) = (Judge(low, low + width, reading, narrow).Judged, Judge(low, low + width, reading, narrow + more).Judged);
            Assert.True(after == before || after == Conformity.NotSure, $"{before} becomes {after}");
        }, iter: 20_000);

    [Fact]
    public void Wider_limits_never_make_it_worse() =>
        Gen.Select(Volts3, Band, Volts3, Band, Gen.Select(Band, Band)).Sample(static (low, width, reading, expanded, more) =>
        {
            var (narrow, wide) = (Judge(low, low + width, reading, expanded), Judge(low - more.Item1, low + width + more.Item2, reading, expanded));
            Assert.True(wide.Judged <= narrow.Judged);
            Assert.True(wide.Probability >= narrow.Probability - 1e-14);
        }, iter: 20_000);

    [Fact]
    public void What_is_mirrored_is_judged_alike() =>
        Gen.Select(Volts3, Band, Volts3, Band).Sample(static (low, width, reading, expanded) =>
        {
            var (one, other) = (Judge(low, low + width, reading, expanded), Judge(-low - width, -low, -reading, expanded));
            Assert.Equal(one.Judged, other.Judged);
            Assert.Equal(one.Probability!.Value, other.Probability!.Value, 1e-14);
            Assert.InRange(one.Probability.Value, 0, 1);
        }, iter: 20_000);

    [Fact]
    public void At_a_lone_limit_it_is_as_likely_within_as_outside() =>
        Gen.Select(Volts3, Band.Where(static band => band > 0)).Sample(static (low, expanded) =>
            Assert.Equal(0.5, Usual.Judge<Volt>(new Volts(low), null, new Volts(low), new Volts(expanded)).Probability!.Value, 1e-15));

    private static ConformityJudgement<Volt> Judge(decimal low, decimal high, decimal reading, decimal expanded) =>
        Usual.Judge<Volt>(new Volts(low), new Volts(high), new Volts(reading), new Volts(expanded));
}
