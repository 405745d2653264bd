using Loadmark.Core.Gear;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Ratings;
using Loadmark.Simulation.Bounds;

namespace Loadmark.Workshop.Accepting;

/// <summary>A plug of a finished rig and what a meter must show there, if the rig is built as drawn.</summary>
public sealed record AcceptancePoint
{
    /// <summary>The plug.</summary>
    public required PlugPlace Plug { get; init; }

    /// <summary>What it is called.</summary>
    public string Name => Plug.Name;

    /// <summary>
    /// The volts with nothing plugged in, whichever way round: as the circuit has them, and no more than the load bears. Null where they
    /// are not known.
    /// </summary>
    public required QuantityRange<Volt>? Open { get; init; }

    /// <summary>The volts with all loads running, whichever way round; null where they are not known.</summary>
    public required QuantityRange<Volt>? Loaded { get; init; }

    /// <summary>What the load may draw; null where that is not known.</summary>
    public required QuantityRange<Ampere>? Draw { get; init; }

    /// <summary>The most that the load bears, 1.10 times its highest printed voltage; null where that is not known.</summary>
    public required Volts? Bears { get; init; }

    /// <summary>Whether the current alternates, so that it has no polarity; null where that is not known.</summary>
    public required bool? Alternates { get; init; }

    /// <summary>
    /// The polarity that the plug must have: as drawn, or as the load needs it where the drawing does not tell. Null where neither is
    /// known, and of alternating current.
    /// </summary>
    public required Polarity? Polarity { get; init; }

    /// <summary>Whether a mistake is likely here: joined outlets, a lead that exchanges the contacts, an outlet with a switch.</summary>
    public required bool IsDelicate { get; init; }

    /// <summary>What a plug must show.</summary>
    /// <param name="plug">The plug.</param>
    /// <param name="bounds">Its bounds from the circuit; null where it has none.</param>
    public static AcceptancePoint Of(PlugPlace plug, PlugBounds? bounds)
    {
        ArgumentNullException.ThrowIfNull(plug);
        var (feed, rating, at) = (plug.Lead.Feed, plug.Load.Rating, plug.Lead.Point);
        bool? alternates = at.Form.IsKnown ? at.Form.Value == SupplyForm.Alternating : null;
        Volts? bears = rating.Voltage.IsKnown ? rating.Voltage.Value.High * (1 + VoltageBand.Allowed) : null;
        var drawn = at.Polarity.IsKnown ? at.Polarity.Value : (Polarity?)null;
        var needed = rating.Polarity.IsKnown ? rating.Polarity.Value : (Polarity?)null;
        return new AcceptancePoint
        {
            Plug = plug,
            Open = Size(bounds?.Open) is { } open ? NotOver(open, bears) : null,
            Loaded = Size(bounds?.Loaded),
            Draw = bounds?.Draw,
            Bears = bears,
            Alternates = alternates,
            Polarity = alternates == true ? null : drawn ?? needed,
            IsDelicate = feed.Outlets.Length > 1 || feed.Reverses || at.MayStandAt is not null || alternates != false
                || feed.Outlets.Any(static outlet => outlet.Rating.Modes.Length > 1),
        };
    }

    private static QuantityRange<Volt> NotOver(QuantityRange<Volt> range, Volts? most) => most is { } limit
        ? new QuantityRange<Volt>(Quantity<Volt>.Min(range.Low, limit), Quantity<Volt>.Min(range.High, limit))
        : range;

    /// <summary>The volts whichever way round; null where the range is on both sides of zero, so that it says nothing.</summary>
    private static QuantityRange<Volt>? Size(QuantityRange<Volt>? range) => range switch
    {
        { Low.Value: >= 0 } known => known,
        { High.Value: <= 0 } known => new QuantityRange<Volt>(-1 * known.High, -1 * known.Low),
        _ => null,
    };
}
