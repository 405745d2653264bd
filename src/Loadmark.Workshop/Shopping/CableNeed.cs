using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.Shopping;

/// <summary>Cable of one size that the leads to make take.</summary>
/// <param name="Wire">The size of each of its two conductors.</param>
/// <param name="IsAssumed">Whether the size or a length is assumed for any of the leads.</param>
/// <param name="Leads">The numbers of the leads in the lead list.</param>
/// <param name="Length">The length of all stretches with what their ends take up.</param>
public sealed record CableNeed(Wire Wire, bool IsAssumed, ValueList<int> Leads, Metres Length);
