using Loadmark.Core.Gear;

namespace Loadmark.Core.Rigs;

/// <summary>A named group of a supply's outlets that share a return, where the group has a limit of its own.</summary>
/// <param name="Name">The name that outlets give as their <c>bank</c>.</param>
/// <param name="Total">What the group can give in all.</param>
public sealed record Bank(string Name, SupplyTotal Total);
