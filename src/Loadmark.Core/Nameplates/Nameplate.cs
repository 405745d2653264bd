using System.Collections.Immutable;
using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates;

/// <summary>What a nameplate says: the reading of one label's text.</summary>
/// <param name="Text">The text as it was given, unchanged.</param>
public sealed class Nameplate(string Text) : IEquatable<Nameplate>
{
    /// <summary>The text as it was given, unchanged.</summary>
    public string Text { get; } = Text;

    /// <summary>Whether the low voltage is direct or alternating, where printed.</summary>
    public Field<SupplyForm> Form { get; init; }

    /// <summary>
    /// The sets of figures, in the order printed; empty when no voltage, current or power is printed, and when the label tells
    /// outlets apart: the figures are then those of <see cref="Outlets"/>.
    /// </summary>
    public ImmutableArray<Mode> Modes { get; init; } = [];

    /// <summary>The groups of outlets that the label tells apart, in the order printed; empty when it speaks of one output.</summary>
    public ImmutableArray<PrintedOutlets> Outlets { get; init; } = [];

    /// <summary>Whether the label says that its figures are for each of several outlets without saying how many there are.</summary>
    public bool EachOutlet { get; init; }

    /// <summary>What all outputs together can give; null when not printed.</summary>
    public SupplyTotal? Total { get; init; }

    /// <summary>Readings of voltages that can be taken in several ways ("1,000 mV"); absent when all is clear.</summary>
    public Field<Volts> AmbiguousVolts { get; init; }

    /// <summary>Readings of currents that can be taken in several ways ("1,000 mA"); absent when all is clear.</summary>
    public Field<Amps> AmbiguousAmps { get; init; }

    /// <summary>Readings of powers that can be taken in several ways; absent when all is clear.</summary>
    public Field<Watts> AmbiguousWatts { get; init; }

    /// <summary>The polarity of the plug, where printed.</summary>
    public Field<Polarity> Polarity { get; init; }

    /// <summary>The plug's size, where printed.</summary>
    public Field<Plug> Plug { get; init; }

    /// <summary>Whether the output is regulated (true) or not (false), where the label says so; "linear" alone leaves both open.</summary>
    public Field<bool> Regulated { get; init; }

    /// <summary>The voltage with nothing drawn, which is no setting ("14 V no load"); null when not printed.</summary>
    public Volts? NoLoad { get; init; }

    /// <summary>The mains input; null when the label prints none.</summary>
    public MainsInput? Mains { get; init; }

    /// <summary>The low-voltage input of a thing that has an output as well; null when the label prints none.</summary>
    public LowVoltageInput? Input { get; init; }

    /// <summary>
    /// Whether the label of a thing with a low-voltage input tells that it holds a charge of its own (a capacity in mAh or Wh, "power
    /// bank", "battery"): it gives what it gives without being fed, as long as that lasts. No where the label prints no such input.
    /// </summary>
    public bool HoldsCharge { get; init; }

    /// <summary>Which side of the supply is joined to ground, where printed.</summary>
    public Field<GroundSide> Ground { get; init; }

    /// <summary>Whether the outputs are isolated from one another (true) or share a return (false), where printed.</summary>
    public Field<bool> Isolated { get; init; }

    /// <summary>
    /// What words or drawings on the label speak of that were not understood: no default may take the place of what they say.
    /// </summary>
    public LabelTopics NotUnderstood { get; init; }

    /// <summary>
    /// Whether any figure in VA is printed, read or not: transformers are rated so (common practice, no source).
    /// </summary>
    public bool PrintsVoltAmps { get; init; }

    /// <summary>Which figures were computed from others, by key: <c>amps</c>, <c>watts</c>, <c>volts</c>, <c>voltAmps</c>.</summary>
    public ImmutableArray<string> Derived { get; init; } = [];

    /// <summary>Printed figures that do not agree with one another, each as a sentence.</summary>
    public ImmutableArray<string> Conflicts { get; init; } = [];

    /// <summary>What was not understood, in the order printed.</summary>
    public ImmutableArray<Unread> Unread { get; init; } = [];

    /// <summary>Two nameplates are equal when their text is: the reading follows from it.</summary>
    public bool Equals(Nameplate? other) => other is not null && Text == other.Text;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Nameplate);

    /// <inheritdoc/>
    public override int GetHashCode() => Text.GetHashCode(StringComparison.Ordinal);

    /// <inheritdoc/>
    public override string ToString() => Text;
}
