using Loadmark.Core.Gear;

namespace Loadmark.Core.Checks;

/// <summary>What a supply or a bank can give in all, with what is asked of it; all in amps or all in watts, as it is printed.</summary>
/// <param name="Supply">The supply's id.</param>
/// <param name="Holder">What has the limit, in words: "brick in all", "bank left of brick".</param>
/// <param name="Limit">The limit.</param>
/// <param name="Run">The sum of the running draws.</param>
/// <param name="Start">The sum of what is drawn while everything starts.</param>
/// <param name="IsWhole">Whether every draw is known, so that the sums are not merely the least.</param>
public sealed record TotalLoading(string Supply, string Holder, SupplyTotal Limit, SupplyTotal Run, SupplyTotal Start, bool IsWhole);
