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
        .Load("OD-03", Plate.Dc(9, 12))
        .Supply("brick", supply => (change ?? (same => same))(FedByAdaptor(supply))).Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100))
        .Supply("wall").Outlet("1", Plate.Dc(volts, milliamps));

    [Fact]
    public void Its_input_is_judged_and_summed_like_a_load()
    {
        var fits = Brick(12, 3000).Feed("wall/1", "brick").Feed("brick/1", "OD-03").Check();
        Expect.Keeps(fits, "unfed", "over-voltage", "under-voltage", "outlet-overload", "reversed-polarity", "mains-mismatch");
        Assert.True(fits.Verdict < Severity.Unsure);
        Assert.Equal(2m, fits.Outlets.Items.Single(outlet => outlet.Outlet.Supply == "wall").Run!.Value.Value);

        Expect.Breaks(Brick(12, 1500).Feed("wall/1", "brick").Feed("brick/1", "OD-03").Check(), "outlet-overload", "brick 2 A > 1.5 A");
        Expect.Breaks(Brick(18, 3000).Feed("wall/1", "brick").Feed("brick/1", "OD-03").Check(), "over-voltage", "18 V > 1.10 × 12 V = 13.2 V");
    }

    [Fact]
    public void Without_it_its_outlets_give_nothing()
    {
        Assert.Equal("brick is fed by nothing, so its outlets give nothing.", Expect.Breaks(Brick(12, 3000).Feed("brick/1", "OD-03").Check(), "unfed").Message);
        Expect.Keeps(New().Load("OD-03", Plate.Dc(9, 12)).Supply("brick", FedByAdaptor).Outlet("1", Plate.Dc(9, 100)).Supply("wall").Outlet("1", Plate.Dc(9, 100)).Feed("wall/1", "OD-03").Check(), "unfed");
    }

    [Fact]
    public void Its_outlets_share_the_return_of_its_input_unless_they_are_isolated()
    {
        RigBuilder Rig(bool isolated) => Brick(12, 3000, supply => supply with { Isolated = isolated }).Digital("DL-02", Plate.Dc(12, 50), Starts(50))
            .Lead("y", LeadType.DaisyChain, 2).FeedOver("y", "wall/1", "brick", "DL-02").Feed("brick/1", "OD-03");
        Expect.Breaks(Rig(isolated: false).Check(), "shared-return-digital");
        Expect.Keeps(Rig(isolated: true).Check(), "shared-return-digital");
    }
}
