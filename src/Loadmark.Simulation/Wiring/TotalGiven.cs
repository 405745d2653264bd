using Loadmark.Core.Gear;

namespace Loadmark.Simulation.Wiring;

/// <summary>
/// What a supply or a bank gives in all, against what it is printed for. It limits nothing in the circuit: it is judged afterwards.
/// </summary>
/// <param name="Supply">The supply's id.</param>
/// <param name="Holder">What has the limit, in words: "brick in all".</param>
/// <param name="Limit">What is printed.</param>
/// <param name="Given">The same in the circuit, in the same units; at start-up its peak.</param>
/// <param name="IsOver">Whether more is given than is printed.</param>
public sealed record TotalGiven(string Supply, string Holder, SupplyTotal Limit, SupplyTotal Given, bool IsOver);
