using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Explaining;

/// <summary>Loads that cannot all be fed, and why; leave out any one of them and the rest can.</summary>
/// <param name="Loads">The tags of the loads.</param>
/// <param name="Because">What stands in the way, as a sentence for a technician.</param>
public sealed record Reason(ValueList<string> Loads, string Because);
