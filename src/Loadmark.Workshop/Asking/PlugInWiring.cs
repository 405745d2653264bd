using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;
using Loadmark.Planning;
using Loadmark.Planning.Explaining;
using Loadmark.Planning.Search;

namespace Loadmark.Workshop.Asking;

/// <summary>How the things that are asked about would be plugged together.</summary>
/// <param name="Rig">The rig with its wiring, safe or not.</param>
/// <param name="Unfed">The loads that no wiring feeds; empty where the wiring is what was asked for, whatever it does.</param>
/// <param name="Reasons">Why those are not fed, each a sentence.</param>
internal sealed record PlugInWiring(Rig Rig, ValueList<string> Unfed, ValueList<string> Reasons)
{
    /// <summary>The name of the lead that several loads hang on.</summary>
    public const string Chain = "chain";

    private const int MostTried = 200;
    private static readonly TimeSpan PlanningTime = TimeSpan.FromSeconds(5);

    /// <summary>
    /// Plugs the loads in: all on the outlet and setting where the rules find least against it, where there is one load, one outlet, or a
    /// chain is wanted; else as the planner does it.
    /// </summary>
    /// <param name="rig">The rig; with a supply, and without wiring.</param>
    /// <param name="isChain">Whether all loads hang on one lead.</param>
    /// <param name="cancellation">Stops the planner.</param>
    public static PlugInWiring Of(Rig rig, bool isChain, CancellationToken cancellation)
    {
        var outlets = Outlets(rig);
        if (isChain || rig.Loads.Count == 1 || outlets.Count == 1)
            return new PlugInWiring(OnOneOutlet(rig), [], []);

        // More loads than outlets: some have to hang on one lead.
        var shared = rig.Loads.Count > outlets.Count ? rig with { Leads = [.. rig.Leads.Items, ChainOf(rig.Loads.Count)] } : rig;
        var options = new PlanOptions { TimeLimit = PlanningTime };
        var plan = RigPlanner.Plan(shared, options, cancellation);
        var reasons = plan.Unfed.Count == 0
            ? []
            : PlanExplainer.Explain(plan, options, cancellation).Reasons.Items.Select(static reason => reason.Because);
        return new PlugInWiring(WithoutUnusedChain(plan.Rig), plan.Unfed, [.. reasons]);
    }

    /// <summary>
    /// All loads on one outlet, on one lead where they are several: of all outlets and settings the one with least against it.
    /// </summary>
    private static Rig OnOneOutlet(Rig rig)
    {
        var loads = rig.Loads.Items.Select(static load => load.Id).ToList();
        var chain = loads.Count > 1 ? Chain : null;
        var leads = chain is null ? rig.Leads : [.. rig.Leads.Items, ChainOf(loads.Count)];
        return Outlets(rig).SelectMany(static outlet => Settings(outlet).Select(setting => new Feed
        {
            From = [outlet.Reference],
            At = setting is { } volts ? [volts] : [],
            To = [],
        })).Take(MostTried)
            .Select(feed => rig with { Leads = leads, Wired = [feed with { Lead = chain, To = [.. loads] }] })
            .MinBy(static wired => SeverityCounts.Of(NameplateCheck.Of(wired)))!;
    }

    private static Rig WithoutUnusedChain(Rig rig) => (rig.Wired ?? []).Items.Any(static feed => feed.Lead == Chain)
        ? rig
        : rig with { Leads = [.. rig.Leads.Items.Where(static lead => lead.Id != Chain)] };

    /// <summary>A lead with plugs for several loads.</summary>
    /// <param name="plugs">How many.</param>
    public static Lead ChainOf(int plugs) => new() { Id = Chain, Type = LeadType.DaisyChain, Plugs = plugs };

    /// <summary>
    /// The settings of an outlet that the wiring has to name; one unnamed where there is nothing to set, and where a range is printed: what
    /// it is set to, or gives of itself, nobody knows then.
    /// </summary>
    private static List<Volts?> Settings(OutletRating outlet)
    {
        List<Volts?> settings = [.. outlet.Settings];
        return settings.Count < 2 || outlet.Modes.Any(static mode => mode.Volts is { IsSingle: false }) ? [null] : settings;
    }

    private static List<OutletRating> Outlets(Rig rig) =>
        [.. rig.Supplies.Items.SelectMany(static supply => supply.Outlets.Items.Select(outlet => OutletRating.Of(supply, outlet)))];
}
