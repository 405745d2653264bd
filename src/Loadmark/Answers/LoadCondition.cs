using Loadmark.Simulation.Figures;

namespace Loadmark.Answers;

/// <summary>How a load fares, in the steady state or in the first seconds.</summary>
/// <param name="State">How it fares.</param>
/// <param name="Cycles">Whether it goes on and off for ever.</param>
/// <param name="Because">Why it does not run; null where it does.</param>
internal sealed record LoadCondition(LoadState State, bool Cycles, string? Because);
