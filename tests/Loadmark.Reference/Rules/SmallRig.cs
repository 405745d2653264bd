using Loadmark.Core.Checks;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Reference.Rules;

/// <summary>Rigs of one supply and a few loads, as small as a rule of thumb needs them.</summary>
public static class SmallRig
{
    /// <summary>A load that runs at a measured current.</summary>
    /// <param name="id">Its tag.</param>
    /// <param name="label">Its label.</param>
    /// <param name="milliamps">What it draws, in mA.</param>
    public static Load Load(string id, string label, decimal milliamps) =>
        new() { Id = id, Label = NameplateReader.Read(label), Run = new Amps(milliamps / 1000) };

    /// <summary>An outlet by its label.</summary>
    public static Outlet Outlet(string id, string label) => new() { Id = id, Label = NameplateReader.Read(label) };

    /// <summary>A supply with isolated outlets.</summary>
    public static Supply Supply(params Outlet[] outlets) =>
        new() { Id = "brick", Isolated = true, Outlets = new([.. outlets]) };

    /// <summary>One outlet feeding one load over a plain lead.</summary>
    public static Feed Feed(string outlet, string load) => new() { From = [new OutletRef("brick", outlet)], To = [load] };

    /// <summary>Checks one outlet with loads on it, on a daisy chain when there are several.</summary>
    public static CheckResult Check(string outletLabel, params Load[] loads)
    {
        ValueList<string> tags = new([.. loads.Select(load => load.Id)]);
        var chain = new Lead { Id = "chain", Type = LeadType.DaisyChain, Plugs = loads.Length };
        return NameplateCheck.Of(new Rig
        {
            Name = "One outlet",
            Loads = new([.. loads]),
            Supplies = [Supply(Outlet("1", outletLabel))],
            Leads = loads.Length > 1 ? [chain] : [],
            Wired = [new Feed { From = [new OutletRef("brick", "1")], Lead = loads.Length > 1 ? "chain" : null, To = tags }],
        });
    }

    /// <summary>The findings of one rule.</summary>
    public static IReadOnlyList<Finding> Of(CheckResult result, string rule) =>
        [.. result.Findings.Where(finding => finding.Rule == rule)];
}
