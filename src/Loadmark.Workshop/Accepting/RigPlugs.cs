using Loadmark.Core.LeadLists;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.Accepting;

/// <summary>The plugs of a rig, without anything computed.</summary>
public static class RigPlugs
{
    /// <summary>Lists them.</summary>
    /// <param name="rig">The rig.</param>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    public static PlugList Of(Rig rig) => PlugList.Of(LeadList.Of(WiredRig.Of(rig)));
}
