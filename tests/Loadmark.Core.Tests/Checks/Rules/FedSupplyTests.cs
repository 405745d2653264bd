using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>A supply that is fed by another is a load of it as well, and is wired by its own name.</summary>
public sealed class FedSupplyTests
{
    private static Supply FedByAdaptor(Supply supply) => supply with
    {
        Mains = null,
        Label = new Nameplate("INPUT 12V DC 2A centre negative")
        {
            Input = new LowVoltageInput(QuantityRange<Volt>.Single(new Volts(12)), new Amps(2), null, default) { Form = Field<SupplyForm>.Read(SupplyForm.Direct, default) },
            Polarity = Field<Polarity>.Read(Polarity.CentreNegative, default),
        },
    };

    private static RigBuilder Brick(decimal volts, decimal milliamps, Func<Supply, Supply>? change = null) => New()
        .Load("drive-3", Plate.Dc(9, 12))
        .Supply("brick", supply => (change ?? (same => same))(FedByAdaptor(supply))).Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100))
        .Supply("wall").Outlet("1", Plate.Dc(volts, milliamps));

    [Fact]
    public void Its_input_is_judged_and_summed_like_a_load()
    {
        var fits = Brick(12, 3000).Feed("wall/1", "brick").Feed("brick/1", "drive-3").Check();
        Expect.Keeps(fits, "unfed", "over-voltage", "under-voltage", "outlet-overload", "reversed-polarity", "mains-mismatch");
        Assert.True(fits.Verdict < Severity.Unsure);
        Assert.Equal(2m, fits.Outlets.Items.Single(outlet => outlet.Outlet.Supply == "wall").Run!.Value.Value);

        Expect.Breaks(Brick(12, 1500).Feed("wall/1", "brick").Feed("brick/1", "drive-3").Check(), "outlet-overload", "brick 2 A > 1.5 A");
        Expect.Breaks(Brick(18, 3000).Feed("wall/1", "brick").Feed("brick/1", "drive-3").Check(), "over-voltage", "18 V > 1.10 × 12 V = 13.2 V");
    }

    [Fact]
    public void Without_it_its_outlets_give_nothing()
    {
        Assert.Equal("brick is fed by nothing, so its outlets give nothing.", Expect.Breaks(Brick(12, 3000).Feed("brick/1", "drive-3").Check(), "unfed").Message);
        Expect.Keeps(New().Load("drive-3", Plate.Dc(9, 12)).Supply("brick", FedByAdaptor).Outlet("1", Plate.Dc(9, 100)).Supply("wall").Outlet("1", Plate.Dc(9, 100)).Feed("wall/1", "drive-3").Check(), "unfed");
    }

    [Fact]
    public void Its_outlets_share_the_return_of_its_input_unless_they_are_isolated()
    {
        RigBuilder Rig(bool isolated) => Brick(12, 3000, supply => supply with { Isolated = isolated }).Digital("delay-2", Plate.Dc(12, 50), Starts(50))
            .Lead("y", LeadType.DaisyChain, 2).FeedOver("y", "wall/1", "brick", "delay-2").Feed("brick/1", "drive-3");
        Expect.Breaks(Rig(isolated: false).Check(), "shared-return-digital");
        Expect.Keeps(Rig(isolated: true).Check(), "shared-return-digital");
    }

    /// <summary>A supply behind itself, alone or in a circle of two, is fed by nothing; one behind a supply on the mains is.</summary>
    [Fact]
    public void A_supply_that_stands_behind_itself_is_fed_by_nothing()
    {
        var alone = Hub("hub").Feed("hub/1", "hub").Feed("hub/2", "drive-1").Check();
        Assert.StartsWith("hub is fed by itself", Expect.Breaks(alone, "unfed").Message, StringComparison.Ordinal);

        var circle = Hub("one", "two").Feed("one/1", "two").Feed("two/1", "one").Feed("two/2", "drive-1").Check();
        Assert.Equal(["one", "two"], circle.Findings.Items.Where(static finding => finding.Rule == RuleId.Unfed).SelectMany(static finding => finding.Subjects.Items).Order(StringComparer.Ordinal));

        Expect.Keeps(Hub("one", "two").Supply("wall").Outlet("1", Plate.Dc(9, 1000)).Feed("wall/1", "one").Feed("one/1", "two").Feed("two/2", "drive-1").Check(), "unfed");
    }

    /// <summary>A supply that nothing feeds is idle while it feeds nothing; once in use it is told as a fault, not as left idle.</summary>
    [Fact]
    public void A_dead_supply_is_idle_only_while_it_feeds_nothing()
    {
        Assert.Equal(["hub"], Hub("hub").Check().IdleSupplies);
        var used = Hub("hub").Feed("hub/1", "drive-1").Check();
        Assert.Empty(used.IdleSupplies);
        Assert.Empty(used.FreeOutlets);
        var fed = Hub("hub").Supply("wall").Outlet("1", Plate.Dc(9, 1000)).Feed("wall/1", "hub").Check();
        Assert.Empty(fed.IdleSupplies);
        Assert.Equal(["hub/1", "hub/2"], fed.FreeOutlets.Select(static outlet => outlet.Outlet.ToString()));
    }

    /// <summary>What holds a charge of its own gives without being fed, and that is told; without a word of a charge it gives nothing.</summary>
    [Theory]
    [InlineData("POWER BANK 10000mAh INPUT 9V DC 200mA OUTPUT 9V DC 500mA", true)]
    [InlineData("Li-ion 37 Wh IN 9V DC 200mA OUT 9V DC 500mA", true)]
    [InlineData("BATTERY PACK input 9V DC 200mA output 9V DC 500mA", true)]
    [InlineData("INPUT 9V DC 200mA OUTPUT 9V DC 500mA", false)]
    [InlineData("INPUT 9V DC 200mA OUTPUT 9V DC 500mA not for use with batteries", false)]
    [InlineData("no battery. INPUT 9V DC 200mA OUTPUT 9V DC 500mA", false)]
    [InlineData("BATTERY ELIMINATOR INPUT 9V DC 200mA OUTPUT 9V DC 500mA", false)]
    [InlineData("charger for batteries INPUT 9V DC 200mA OUTPUT 9V DC 500mA", false)]
    [InlineData("do not open. battery 10 Ah INPUT 9V DC 200mA OUTPUT 9V DC 500mA", true)]
    [InlineData("MODEL 10000 INPUT 9V DC 200mA OUTPUT 9V DC 500mA WHITE", false)]
    public void What_holds_a_charge_need_not_be_fed(string label, bool holds)
    {
        var read = NameplateReader.Read(label);
        Assert.Equal(holds, read.HoldsCharge);
        var check = New().Load("drive-1", Plate.Dc(9, 12)).Supply("pack", supply => supply with { Label = read, Mains = null }).Outlet("1", Plate.Dc(9, 500)).Feed("pack/1", "drive-1").Check();
        var told = check.Findings.Items.Single(static finding => finding.Rule == RuleId.Unfed);
        Assert.Equal(holds ? Severity.Margin : Severity.Fails, told.Severity);
    }

    private static RigBuilder Hub(params string[] ids)
    {
        var rig = New().Load("drive-1", Plate.Dc(9, 12));
        foreach (var id in ids)
            rig = rig.Supply(id, static supply => supply with { Label = NameplateReader.Read("INPUT 9V DC 200mA OUTPUTS 1-2 9V DC 300mA"), Mains = null }).Outlet("1", Plate.Dc(9, 300)).Outlet("2", Plate.Dc(9, 300));
        return rig;
    }
}
