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

    /// <summary>The sets of figures, in the order printed; empty when no voltage, current or power is printed.</summary>
    public ImmutableArray<Mode> Modes { get; init; } = [];

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

    /// <summary>The mains input; null when the label prints none.</summary>
    public MainsInput? Mains { get; init; }

    /// <summary>Which figures were computed from others, by key: <c>amps</c>, <c>watts</c>, <c>volts</c>.</summary>
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
