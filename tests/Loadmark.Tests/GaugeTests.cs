using CsCheck;
using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Terminal;

namespace Loadmark.Tests;

public sealed class GaugeTests
{
    [Fact]
    public void Rounding_never_hides_on_which_side_of_a_mark_a_draw_is() =>
        Gen.Select(Gen.Int[2, 30], Gen.Int[0, 99], Gen.Int[1, 10_000], Gen.Int[0, 20_000]).Sample((cells, percent, limit, draw) =>
        {
            var headroom = percent / 100m;
            var gauge = new MarkGauge(cells, headroom).Of(Outlet(limit, draw, draw));
            var last = LastIndexOf(gauge, GaugeCell.Run, GaugeCell.RunPast);
            Assert.Equal(draw > 0, last >= 0);
            Assert.Equal(draw > limit, last > IndexOf(gauge, GaugeCell.Mark));
            if (IndexOf(gauge, GaugeCell.Tick) is >= 0 and var tick)
                Assert.Equal(draw > (1 - headroom) * limit, last > tick);
        });

    [Fact]
    public void More_draw_never_shows_as_less() =>
        Gen.Select(Gen.Int[0, 2_000], Gen.Int[0, 2_000]).Sample((one, other) =>
        {
            var gauge = new MarkGauge(10, 0.1m);
            var less = LastIndexOf(gauge.Of(Outlet(1_000, Math.Min(one, other), 0)), GaugeCell.Run, GaugeCell.RunPast);
            var more = LastIndexOf(gauge.Of(Outlet(1_000, Math.Max(one, other), 0)), GaugeCell.Run, GaugeCell.RunPast);
            Assert.True(less <= more);
        });

    [Fact]
    public void The_rounding_of_a_division_is_no_overload()
    {
        // Two loads of 5 W at 9 V on an outlet of 10 W: 10/9 A, of which the sum rounds up and the limit down.
        var (half, limit) = (new Watts(5) / new Volts(9), new Watts(10) / new Volts(9));
        Assert.True(half + half > limit);
        var outlet = Outlet(1, 0, 0) with { Limit = limit, Run = half + half, Start = half + half };
        Assert.False(outlet.RunsOver || outlet.StartsOver);
        Assert.DoesNotContain(GaugeCell.RunPast, new MarkGauge(10, 0).Of(outlet));
        Assert.True((outlet with { Run = limit + new Amps(0.000001m) }).RunsOver);
    }

    [Fact]
    public void What_is_not_known_shows_as_not_known()
    {
        Assert.Empty(new MarkGauge(10, 0.1m).Of(Outlet(null, 5, 5)));
        Assert.Equal(GaugeCell.Unknown, new MarkGauge(10, 0.1m).Of(Outlet(100, null, null))[0]);
    }

    [Fact]
    public void Every_cell_has_a_look_of_its_own_without_colour()
    {
        var looks = Enum.GetValues<GaugeCell>().Where(cell => cell is not (GaugeCell.RunPast or GaugeCell.StartPast)).Select(GaugeLook.Of).ToList();
        Assert.Equal(looks.Count, looks.Select(look => look.Sign).Distinct().Count());
        Assert.Equal(looks.Count, looks.Select(look => look.AsciiSign).Distinct().Count());
        Assert.All(Enum.GetValues<GaugeCell>(), cell => Assert.Equal(1, GaugeLook.Of(cell).Sign.Length));
    }

    private static OutletLoading Outlet(int? limit, int? run, int? start) => new(
        new OutletRef("brick", "1"),
        new Volts(9),
        limit is { } l ? new Amps(l / 1000m) : null,
        run is { } r ? new Amps(r / 1000m) : null,
        start is { } s ? new Amps(s / 1000m) : null,
        ["drive-3"]);

    private static int IndexOf(IReadOnlyList<GaugeCell> gauge, GaugeCell cell) => gauge.ToList().IndexOf(cell);

    private static int LastIndexOf(IReadOnlyList<GaugeCell> gauge, GaugeCell one, GaugeCell other) =>
        gauge.ToList().FindLastIndex(cell => cell == one || cell == other);
}
