namespace Loadmark.Planning.Tests.Oracle.Fleet;

/// <summary>One sort of load that a hire workshop has several of.</summary>
/// <param name="Tag">The letters its asset tags begin with.</param>
/// <param name="Kind">What sort of load it is.</param>
/// <param name="Low">The lowest printed voltage.</param>
/// <param name="Milliamps">The printed current; where it prints watts, what the printed watts come to at the lowest voltage.</param>
internal sealed record PedalType(string Tag, string Kind, decimal Low, int Milliamps)
{
    /// <summary>The highest printed voltage; null when one voltage is printed.</summary>
    public decimal? High { get; init; }

    /// <summary>Whether its label prints watts in place of amps.</summary>
    public bool InWatts { get; init; }

    /// <summary>Whether it takes alternating current.</summary>
    public bool IsAlternating { get; init; }

    /// <summary>Whether the centre of its plug is positive.</summary>
    public bool IsCentrePositive { get; init; }

    /// <summary>Whether its ground is the positive side.</summary>
    public bool IsGroundPositive { get; init; }

    /// <summary>Whether it wants a return of its own.</summary>
    public bool Isolate { get; init; }

    /// <summary>Whether its jack has the wider pin.</summary>
    public bool HasWidePin { get; init; }

    /// <summary>What it draws while it starts, in percent of what it runs at; 0 where nothing is known of it.</summary>
    public int StartPercent { get; init; }

    /// <summary>How long it takes to start, in tenths of a second; 0 where nothing is known of it.</summary>
    public int StartTenths { get; init; }

    /// <summary>How often it is met, against others.</summary>
    public int Weight { get; init; } = 6;

    /// <summary>Whether its kind makes it digital.</summary>
    public bool IsDigital => Kind.Contains("digital", StringComparison.Ordinal);
}
