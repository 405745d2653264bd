using Google.OrTools.Sat;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>Whether a lead takes from a class of sources, from which of them, and the loads that are on it then.</summary>
/// <param name="Slot">The lead.</param>
/// <param name="Class">The sources.</param>
/// <param name="Used">Whether it does.</param>
/// <param name="Legs">Which outlets it takes.</param>
/// <param name="Cases">The slot's loads.</param>
internal sealed record SlotChoice(LeadSlot Slot, FeedClass Class, IntVar Used, List<LegChoice> Legs, List<LoadsInCase> Cases)
{
    /// <summary>The loads in whatever case of sharing.</summary>
    public IEnumerable<LoadCount> Loads => Cases.SelectMany(static inCase => inCase.Loads);
}
