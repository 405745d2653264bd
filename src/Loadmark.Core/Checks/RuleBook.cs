using System.Collections.Immutable;
using Loadmark.Core.Checks.Rules;

namespace Loadmark.Core.Checks;

/// <summary>All rules, in the order in which findings of one severity are told.</summary>
public static class RuleBook
{
    /// <summary>The rules, worst severity first.</summary>
    public static ImmutableArray<IRule> Rules => [.. All];

    /// <summary>The rules, ready to judge.</summary>
    internal static ImmutableArray<NameplateRule> All { get; } =
    [
        new OverVoltage(),
        new ReversedPolarity(),
        new AcIntoDc(),
        new DcIntoAc(),
        new AcShared(),
        new GroundShort(),
        new SeriesShort(),
        new ParallelUnequal(),
        new MainsMismatch(),

        new UnderVoltage(),
        new OutletOverload(),
        new StartOverload(),
        new BankOverload(),
        new SupplyOverload(),
        new PlugMismatch(),
        new Unfed(),
        new FedTwice(),
        new OutletUsedTwice(),
        new LeadShortOfPlugs(),

        new Unregulated(),

        new SharedReturnDigital(),
        new ReturnNotItsOwn(),

        new ThinHeadroom(),
        new VoltageHigh(),
        new VoltageLow(),
        new PlugLoose(),
        new NamesAlike(),

        new FigureAssumed(),
        new IdleCapacity(),
        new FigureConflict(),
        new FigureDerived(),
    ];
}
