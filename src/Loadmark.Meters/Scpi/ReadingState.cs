namespace Loadmark.Meters.Scpi;

/// <summary>What an instrument says of a value that it measured.</summary>
public enum ReadingState
{
    /// <summary>It is a value.</summary>
    Measured,

    /// <summary>It is beyond the range: ±9.9E37, which stands for infinity (SCPI-99 vol. 1, 7.2.1; from memory).</summary>
    OverRange,

    /// <summary>It is not a number: 9.91E37 (SCPI-99 vol. 1, 7.2.1; from memory).</summary>
    NotANumber,
}
