using Loadmark.Core.LeadLists;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Simulation;
using Loadmark.Simulation.Bounds;
using Loadmark.Simulation.Starting;

namespace Loadmark.Workshop.Sheets;

/// <summary>All that is computed for a sheet, once for all of its parts.</summary>
public sealed class SheetFigures
{
    private readonly Dictionary<string, PlugBounds> _bounds;

    private SheetFigures(Rig rig, string version, RigAnalysis analysis, ValueList<PlugBounds> bounds)
    {
        (Rig, Version, Analysis, Leads) = (rig, version, analysis, LeadList.Of(analysis.Wired));
        _bounds = bounds.Items.ToDictionary(static one => one.Load, StringComparer.Ordinal);
    }

    /// <summary>The rig, its names as they are printed.</summary>
    public Rig Rig { get; }

    /// <summary>The rig looked up, checked, settled and started.</summary>
    public RigAnalysis Analysis { get; }

    /// <summary>The leads that the wiring takes.</summary>
    public ValueList<ListedLead> Leads { get; }

    /// <summary>The rig's version: eight letters and digits that differ where anything of the rig does.</summary>
    public string Version { get; }

    /// <summary>The first seconds.</summary>
    public StartUpResult Started => Analysis.Started!;

    /// <summary>Computes what a sheet says.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="Core.Ratings.InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static SheetFigures Of(Rig rig, CancellationToken cancellation = default)
    {
        var version = RigVersion.Of(rig);
        rig = PrintedNames.Of(rig);
        var analysis = RigAnalysis.Of(rig, AnalysisDepth.StartUp, cancellation);
        return new SheetFigures(rig, version, analysis, RigBounds.Of(analysis.Circuit!, cancellation: cancellation));
    }

    /// <summary>Between which voltages the plug of a load must be found; null where the rig has no such load.</summary>
    public PlugBounds? BoundsOf(string load) => _bounds.GetValueOrDefault(load);
}
