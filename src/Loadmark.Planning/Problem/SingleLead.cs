using System.Collections.Immutable;

namespace Loadmark.Planning.Problem;

/// <summary>Leads for one load that are alike: reversing ones, and straight ones with a plug of their own.</summary>
/// <param name="Index">The kind's place among the kinds of leads.</param>
/// <param name="Ends">What such a lead does.</param>
/// <param name="Ids">The ids of the leads, one for each.</param>
internal sealed record SingleLead(int Index, LeadEnds Ends, ImmutableArray<string> Ids);
