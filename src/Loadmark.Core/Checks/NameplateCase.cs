using System.Collections.Immutable;
using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks;

/// <summary>What the rules on nameplates judge.</summary>
/// <param name="Rig">The rig with everything looked up.</param>
/// <param name="Budgets">The rig's limits with what is asked of them.</param>
/// <param name="Feeds">The rig's feeds with how each suits its loads, in the order of the wiring.</param>
/// <param name="Returns">The rig's returns with what the loads on each are to one another.</param>
internal sealed record NameplateCase(WiredRig Rig, Budgets Budgets, ImmutableArray<JudgedFeed> Feeds, ImmutableArray<JudgedReturn> Returns)
{
    private TakenForGranted? _taken;

    /// <summary>The conventions of the trade that the rig's verdict rests on.</summary>
    public TakenForGranted TakenForGranted => _taken ??= new TakenForGranted(Rig);

    /// <summary>Judges and adds up a wired rig.</summary>
    /// <param name="rig">The rig with everything looked up.</param>
    public static NameplateCase Of(WiredRig rig)
    {
        var feeds = ImmutableArray.CreateBuilder<JudgedFeed>(rig.Feeds.Count);
        foreach (var feed in rig.Feeds)
            feeds.Add(JudgedFeed.Of(feed));
        var signal = new SignalPath(rig.Rig);
        var returns = ImmutableArray.CreateBuilder<JudgedReturn>(rig.Returns.Count);
        foreach (var group in rig.Returns)
            returns.Add(JudgedReturn.Of(group, signal));
        return new NameplateCase(rig, Budgets.Of(rig), feeds.MoveToImmutable(), returns.MoveToImmutable());
    }
}
