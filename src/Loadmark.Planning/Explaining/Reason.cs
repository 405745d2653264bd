using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Explaining;

/// <summary>Loads that cannot all be fed, and why; leave out any one of them and the rest can.</summary>
/// <param name="Loads">
/// The tags of the loads; a single dark one where the time did not suffice to find out what stands in the way, which the sentence says
/// then.
/// </param>
/// <param name="Because">What stands in the way, as a sentence for a technician.</param>
/// <param name="AlsoDark">
/// Further loads that the plan leaves dark: each of them, in the place of the last of <paramref name="Loads"/>, cannot be fed beside the
/// others either.
/// </param>
public sealed record Reason(ValueList<string> Loads, string Because, ValueList<string> AlsoDark);
