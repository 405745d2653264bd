using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;
using Loadmark.Core.Ratings;
using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Wiring;

/// <summary>A load of the rig in the circuit, or the reason why it is not there.</summary>
public sealed record LoadBranch
{
    /// <summary>The load whose branch this is.</summary>
    public required WiredLoad Load { get; init; }

    /// <summary>The feed that the load is computed on, its first; null where it is unwired or its feed cannot be computed.</summary>
    public WiredFeed? Feed { get; init; }

    /// <summary>The load's jack, in the polarity that the load wants; null where there is none in the circuit.</summary>
    public Terminals? Jack { get; init; }

    /// <summary>
    /// Where it is; null where it draws nothing: unwired, reversed, of the wrong kind of current, or its draw is not known.
    /// </summary>
    public DevicePlace? Device { get; init; }

    /// <summary>Why the load draws nothing or cannot be computed; null where it is computed.</summary>
    public string? Because { get; init; }

    /// <summary>How the load's current follows its voltage.</summary>
    public LoadLaw Law { get; init; }

    /// <summary>Whether the load is a heater, whose resistance rises as it warms.</summary>
    public bool IsHeater { get; init; }

    /// <summary>
    /// The voltage that the load's power or its resistance is reckoned at, V: what it is fed, within what it is printed for.
    /// </summary>
    public double NominalVolts { get; init; }

    /// <summary>What the load draws when it runs, A at <see cref="NominalVolts"/>.</summary>
    public double RunAmps { get; init; }

    /// <summary>What the load draws while it starts, A at <see cref="NominalVolts"/>; the running draw where nothing is given.</summary>
    public double StartAmps { get; init; }

    /// <summary>How long the load starts, s; 0 where no starting draw is given.</summary>
    public double StartSeconds { get; init; }

    /// <summary>The load starts at or above this, V.</summary>
    public double StartsAbove { get; init; }

    /// <summary>The load drops out below this, V.</summary>
    public double StopsBelow { get; init; }

    /// <summary>The lowest voltage printed on it, V.</summary>
    public double LowestPrintedVolts { get; init; }

    /// <summary>
    /// The slot of the load's draw when it runs; null where it has no device. In the unit of its law, see <see cref="DrawOf"/>.
    /// </summary>
    public ParameterSlot? RunSlot { get; init; }

    /// <summary>The slot of the load's draw while it starts; of a heater its cold resistance; null where it has none.</summary>
    public ParameterSlot? StartSlot { get; init; }

    /// <summary>The load's tag.</summary>
    public string Id => Load.Id;

    /// <summary>A current in the unit of the load's law: A, W or Ω.</summary>
    /// <param name="amps">The current at <see cref="NominalVolts"/>, A, 0 or more.</param>
    public double DrawOf(double amps) => Law switch
    {
        LoadLaw.Current => amps,
        LoadLaw.Power => amps * NominalVolts,
        _ => NominalVolts / Math.Max(amps, LeastAmps),
    };

    /// <summary>What a resistance that draws nothing is taken to draw, so that it has a value, A.</summary>
    private const double LeastAmps = 1e-9;

    /// <summary>The capacitor at the load's input as its class has it.</summary>
    internal static LoadClassDefaults DefaultsOf(LoadRating rating) => LoadClassDefaults.Of(rating.Load.Kind);
}
