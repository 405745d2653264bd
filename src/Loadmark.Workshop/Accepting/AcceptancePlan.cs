using Loadmark.Core.Checks;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Simulation;
using Loadmark.Simulation.Bounds;

namespace Loadmark.Workshop.Accepting;

/// <summary>What is to be measured on a finished rig, in which order, and between which ends each reading must lie.</summary>
public sealed class AcceptancePlan
{
    private AcceptancePlan(Rig rig, string version, CheckResult check, PlugList plugs, ValueList<AcceptancePoint> points) =>
        (Rig, Version, Check, Plugs, Points) = (rig, version, check, plugs, points);

    /// <summary>How the probes are held, so that a sign tells the polarity.</summary>
    public static string ProbeText => "Red probe on the centre contact, black on the sleeve: a minus then means centre negative.";

    /// <summary>The rig as drawn.</summary>
    public Rig Rig { get; }

    /// <summary>The rig's version, as on its sheet.</summary>
    public string Version { get; }

    /// <summary>What the rules say of the rig as drawn.</summary>
    public CheckResult Check { get; }

    /// <summary>The plugs and what they are called.</summary>
    public PlugList Plugs { get; }

    /// <summary>
    /// The plugs in the order of measuring: those first where a mistake is likeliest to do harm, since nothing may be plugged in before all
    /// of them were found right.
    /// </summary>
    public ValueList<AcceptancePoint> Points { get; }

    /// <summary>Computes what is to be measured.</summary>
    /// <param name="rig">The rig as drawn.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="Core.Ratings.InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static AcceptancePlan Of(Rig rig, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var analysis = RigAnalysis.Of(rig, AnalysisDepth.Steady, cancellation);
        return Of(rig, analysis, LeadList.Of(analysis.Wired), RigBounds.Of(analysis.Circuit!, cancellation: cancellation));
    }

    /// <summary>Puts together what is to be measured from what was computed.</summary>
    /// <param name="rig">The rig as drawn.</param>
    /// <param name="analysis">The rig checked and settled.</param>
    /// <param name="leads">Its leads.</param>
    /// <param name="bounds">What its plugs must show.</param>
    public static AcceptancePlan Of(Rig rig, RigAnalysis analysis, ValueList<ListedLead> leads, ValueList<PlugBounds> bounds)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(analysis);
        var byLoad = bounds.Items.ToDictionary(static one => one.Load, StringComparer.Ordinal);
        var plugs = PlugList.Of(leads);

        // What is fed twice has bounds of neither of its plugs alone.
        var points = plugs.Plugs.Items.Select(plug =>
            AcceptancePoint.Of(plug, plug.Load.Feeds.Count == 1 ? byLoad.GetValueOrDefault(plug.Load.Id) : null));
        return new AcceptancePlan(
            rig, RigVersion.Of(rig), analysis.Check, plugs, [.. points.OrderByDescending(static point => point.IsDelicate)]);
    }

    /// <summary>The point of a plug; null where there is none of that name.</summary>
    /// <param name="plug">The name of the plug.</param>
    public AcceptancePoint? Find(string plug) => Points.Items.FirstOrDefault(point => point.Name == plug);
}
