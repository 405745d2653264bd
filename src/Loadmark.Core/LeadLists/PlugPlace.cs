using Loadmark.Core.Ratings;

namespace Loadmark.Core.LeadLists;

/// <summary>One plug of a rig that a load is fed by.</summary>
/// <param name="Name">What it is called: the outlets of its lead and which of its plugs it is, as in "brick/5 plug 1".</param>
/// <param name="Lead">The lead.</param>
/// <param name="Place">Which of the lead's plugs it is, from 1.</param>
/// <param name="Load">The load that it feeds.</param>
public sealed record PlugPlace(string Name, ListedLead Lead, int Place, WiredLoad Load);
