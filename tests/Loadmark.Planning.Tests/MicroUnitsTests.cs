using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Tests;

/// <summary>Whole numbers are on the safe side: draws never smaller, limits never larger than they are.</summary>
public sealed class MicroUnitsTests
{
    [Fact]
    public void What_ends_at_millionths_is_exact()
    {
        Assert.Equal(12_345, MicroUnits.Draw(0.012345m));
        Assert.Equal(12_345, MicroUnits.Limit(0.012345m));
    }

    [Fact]
    public void Draws_round_up_and_limits_round_down()
    {
        Assert.Equal(12_346, MicroUnits.Draw(0.0123451m));
        Assert.Equal(12_345, MicroUnits.Limit(0.0123459m));
    }

    [Fact]
    public void A_quotient_times_its_divisor_is_whole_again()
    {
        Assert.Equal(6_000_000, MicroUnits.Draw(6m / 9m * 9m));
        Assert.Equal(6_000_000, MicroUnits.Limit(6m / 9m * 9m));
    }

    [Fact]
    public void What_is_too_large_to_hold_is_over_every_limit() =>
        Assert.True(MicroUnits.Draw(decimal.MaxValue) > MicroUnits.Limit(decimal.MaxValue));
}
