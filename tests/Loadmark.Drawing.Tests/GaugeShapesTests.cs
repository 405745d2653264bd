using CsCheck;
using Loadmark.Drawing.Diagrams;

namespace Loadmark.Drawing.Tests;

/// <summary>The level of a gauge never tells a lie about its marks.</summary>
public sealed class GaugeShapesTests
{
    private static readonly Gen<(decimal, decimal)> Shares = Gen.Select(Gen.Int[0, 3_000_000], Gen.Int[0, 99], static (share, headroom) => (share / 1_000_000m, headroom / 100m));

    [Fact]
    public void The_level_is_on_the_right_side_of_the_mark_and_of_the_tick() => Shares.Sample(
        static (share, headroom) =>
        {
            var level = GaugeShapes.LevelOf(share, headroom);
            var tick = (double)(1 - headroom) * GaugeShapes.Mark;
            Assert.InRange(level, 0, GaugeShapes.Height);
            Assert.Equal(share == 0, level == 0);
            Assert.Equal(share > 1, level > GaugeShapes.Mark);
            Assert.Equal(share == 1, level == GaugeShapes.Mark);
            if (headroom > 0)
                Assert.Equal(share > 1 - headroom, level > tick + 1e-9);

            // Not only right, but to be seen: at least 2 px over the mark, and 0.8 px over the tick where there is so much room.
            if (share > 1)
                Assert.True(level >= GaugeShapes.Mark + 2);
            if (share > 1 - headroom && share < 1)
                Assert.True(level >= tick + (Math.Min(1.6, GaugeShapes.Mark - tick) / 2) - 1e-9);
        },
        iter: 5000);

    [Fact]
    public void A_larger_draw_never_stands_lower() => Gen.Select(Shares, Gen.Int[0, 3_000_000]).Sample(
        static (shares, other) =>
        {
            var (share, headroom) = shares;
            var more = Math.Max(share, other / 1_000_000m);
            Assert.True(GaugeShapes.LevelOf(share, headroom) <= GaugeShapes.LevelOf(more, headroom) + 1e-9);
        },
        iter: 5000);

    [Fact]
    public void The_rounding_of_a_division_is_no_overload() =>
        Assert.Equal(GaugeShapes.Mark, GaugeShapes.LevelOf(((6m / 9m) + (3m / 9m)) / 1m, 0.1m));
}
