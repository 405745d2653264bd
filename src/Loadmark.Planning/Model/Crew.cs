using Google.OrTools.Sat;

namespace Loadmark.Planning.Model;

/// <summary>The loads on a lead in one kind of company.</summary>
/// <param name="Company">The company.</param>
/// <param name="IsOn">Whether the lead is used so.</param>
/// <param name="Plugs">How many loads there may be.</param>
/// <param name="Loads">The loads.</param>
internal sealed record Crew(Company Company, IntVar IsOn, int Plugs, List<LoadCount> Loads);
