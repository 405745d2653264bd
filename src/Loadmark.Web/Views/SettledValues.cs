using Loadmark.Drawing.Diagrams;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;

namespace Loadmark.Web.Views;

/// <summary>A steady state as the diagram shows it.</summary>
internal static class SettledValues
{
    /// <summary>The values that the diagram shows of a steady state.</summary>
    public static DiagramValues Of(SettleResult settled) => new()
    {
        Outlets = settled.Outlets.Items.Where(static outlet => outlet is { IsFree: false, Amps: not null })
            .ToDictionary(
                static outlet => outlet.Outlet.ToString(),
                static outlet =>
                    new OutletValues(
                        outlet.Amps!.Value, outlet.State == OutletState.Regulating ? null : outlet.State.ToString().ToLowerInvariant()),
                StringComparer.Ordinal),
        Loads = settled.Loads.Items.Where(static load => load.Volts is not null)
            .ToDictionary(
                static load => load.Load,
                static load =>
                    new LoadValues(load.Volts!.Value, load.State == LoadState.Runs ? null : load.State.ToString().ToLowerInvariant()),
                StringComparer.Ordinal),
    };
}
