namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>Which figures beside a word are of something else than the low-voltage supply.</summary>
[Flags]
internal enum ForeignFigures
{
    /// <summary>None: the word says nothing of the kind.</summary>
    None = 0,

    /// <summary>The power of a signal: radio, headphones, a loudspeaker.</summary>
    SignalPower = 1,

    /// <summary>The voltage of a signal, below <see cref="TokenContext.HighestSignal"/>: line level, control voltage.</summary>
    SignalVoltage = 2,

    /// <summary>Every voltage and current: what is inside the thing, such as a valve's anode supply.</summary>
    Inside = 4,

    /// <summary>A voltage from <see cref="TokenContext.LowestDanger"/> up: what a warning speaks of.</summary>
    Danger = 16,

    /// <summary>The voltage of a battery, beside another voltage.</summary>
    Pack = 32,

    /// <summary>The voltage of a cell.</summary>
    Cell = 8,
}
