using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Rigs;

/// <summary>
/// A load as the rig file has it: its label and the figures typed beside the label. What the two say together, with the
/// typed figure winning, is its rating.
/// </summary>
public sealed record Load
{
    /// <summary>The tag the rig knows it by, such as <c>delay-2</c>; unique among the rig's loads.</summary>
    public required string Id { get; init; }

    /// <summary>
    /// What the gear library says of it, where the rig file takes it from there; null when the rig file says all of it. The figures here
    /// are the ones in force: the library's, or what the rig file says instead. A rig file goes on taking it from there as long as
    /// both have the same tag, capitals aside.
    /// </summary>
    public Load? FromLibrary { get; init; }

    /// <summary>A name for people; null when it has none besides its tag.</summary>
    public string? Name { get; init; }

    /// <summary>The load's kind; null when not given.</summary>
    public LoadKind? Kind { get; init; }

    /// <summary>The reading of the load's label; null when no label was typed.</summary>
    public Nameplate? Label { get; init; }

    /// <summary>The voltage typed beside the label, read like a label ("9-18 V", "9 V AC"); null when none was.</summary>
    public Nameplate? Voltage { get; init; }

    /// <summary>The rated current typed beside the label; null when none was.</summary>
    public Amps? Current { get; init; }

    /// <summary>The rated power typed beside the label; null when none was.</summary>
    public Watts? Watts { get; init; }

    /// <summary>The running current, measured or published; null when not known.</summary>
    public Amps? Run { get; init; }

    /// <summary>The current while the load starts, with how long that takes; null when not known.</summary>
    public TimedCurrent? Start { get; init; }

    /// <summary>The polarity typed beside the label; null when none was.</summary>
    public Polarity? Polarity { get; init; }

    /// <summary>The plug typed beside the label; null when none was.</summary>
    public Plug? Plug { get; init; }

    /// <summary>Which side of the load's supply is its ground; null when not given, which means negative.</summary>
    public GroundSide? Ground { get; init; }

    /// <summary>Whether the load wants a return of its own.</summary>
    public bool Isolate { get; init; }

    /// <summary>How the load's current follows its voltage; null when not given, and then its kind decides.</summary>
    public DrawLaw? Draws { get; init; }

    /// <summary>The load does not start while its voltage is below this; null when not known.</summary>
    public Volts? StartsBelow { get; init; }

    /// <summary>The load stops under this voltage; null when not known.</summary>
    public Volts? StopsBelow { get; init; }

    /// <summary>The capacitance across the load's supply input; null when not known.</summary>
    public Farads? InputCapacitance { get; init; }

    /// <summary>How much the show needs the load, 1 (most) to 3 (least); null when not given.</summary>
    public int? Priority { get; init; }

    /// <summary>
    /// The board the load belongs to: a plan feeds it from supplies of that board, or of none, unless it is told otherwise. Null when not
    /// given: then any supply may feed it. Of the rig, not of the gear: the gear library does not keep it.
    /// </summary>
    public string? Board { get; init; }
}
