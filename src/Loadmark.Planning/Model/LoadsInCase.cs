using Google.OrTools.Sat;

namespace Loadmark.Planning.Model;

/// <summary>The loads on a lead in one case of sharing its return.</summary>
/// <param name="SharingCase">The case.</param>
/// <param name="IsOn">Whether the lead is used so.</param>
/// <param name="Plugs">How many loads there may be.</param>
/// <param name="Loads">The loads.</param>
internal sealed record LoadsInCase(SharingCase SharingCase, IntVar IsOn, int Plugs, List<LoadCount> Loads);
