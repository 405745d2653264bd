using Loadmark.Core.Gear;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.Shopping;

/// <summary>What leads are made of, all together: cable by its size, plugs by their kind.</summary>
public sealed record LeadParts
{
    /// <summary>
    /// The cable, in the order in which the leads have it. Leads of which the rig gives ohms instead of a length are not in it.
    /// </summary>
    public required ValueList<CableNeed> Cables { get; init; }

    /// <summary>The plugs, in the order in which the leads have them; those that are not known last.</summary>
    public required ValueList<PlugNeed> Plugs { get; init; }

    /// <summary>The numbers of the leads whose length is not given, so that their cable is not counted.</summary>
    public required ValueList<int> WithoutLength { get; init; }

    /// <summary>Adds up what leads are made of.</summary>
    /// <param name="leads">The leads.</param>
    /// <param name="allowance">What the two ends of each stretch of cable take up.</param>
    public static LeadParts Of(ValueList<ListedLead> leads, Metres allowance) => new()
    {
        Cables =
        [
            .. leads.Items.Where(IsMeasured).GroupBy(static lead => lead.Wire!.Value).Select(group => new CableNeed(
                group.Key,
                group.Any(static lead => lead.LengthIsAssumed || lead.WireIsAssumed),
                [.. group.Select(static lead => lead.Number)],
                new Metres(group.Sum(lead => lead.Length!.Value.Value + (lead.Stretches.Count * allowance.Value))))),
        ],
        Plugs =
        [
            .. leads.Items.SelectMany(PlugsOf).GroupBy(static plug => plug.IsKnown ? plug.Value.Name : null)
                .Select(static alike => new PlugNeed(
                    alike.Key, alike.Count(), alike.Key is null ? 0 : alike.Count(static plug => plug.IsAssumed)))
                .OrderBy(static need => need.Name is null),
        ],
        WithoutLength = [.. leads.Items.Where(static lead => !IsMeasured(lead)).Select(static lead => lead.Number)],
    };

    private static bool IsMeasured(ListedLead lead) => lead is { Wire: not null, Length: not null };

    /// <summary>A lead has a plug for each of its outlets and one for each load that it can feed.</summary>
    private static IEnumerable<Figure<Plug>> PlugsOf(ListedLead lead) =>
        lead.Feed.Outlets.Select(static outlet => outlet.Rating.Plug).Concat(Enumerable.Repeat(lead.Point.Plug, lead.Plugs));
}
