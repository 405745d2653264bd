using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Rigs;

/// <summary>One output of a supply, as the rig file has it.</summary>
public sealed record Outlet
{
    /// <summary>The outlet's name within its supply, such as <c>5</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The reading of the outlet's label; of an empty text when the supply's own label says it all.</summary>
    public required Nameplate Label { get; init; }

    /// <summary>Whether the outlet's return is its own; null when not given, and then the supply decides.</summary>
    public bool? Isolated { get; init; }

    /// <summary>The name of the group of outlets whose return it shares; null for the supply's common one.</summary>
    public string? Bank { get; init; }

    /// <summary>The polarity typed beside the label; null when none was.</summary>
    public Polarity? Polarity { get; init; }

    /// <summary>The plug typed beside the label; null when none was.</summary>
    public Plug? Plug { get; init; }

    /// <summary>The resistance behind the outlet; null when not known.</summary>
    public Ohms? SourceOhms { get; init; }

    /// <summary>What the outlet bears for a moment beyond its limit; null when not known.</summary>
    public TimedCurrent? Surge { get; init; }

    /// <summary>The voltage with nothing connected, as measured; null when not known.</summary>
    public Volts? NoLoad { get; init; }
}
