namespace Loadmark.Planning.Tests.Oracle.Fleet;

/// <summary>One sort of supply that a hire workshop has several of.</summary>
/// <param name="Head">The keys of the supply in the rig file, one a line.</param>
/// <param name="Outlets">Its outlets in the order of their numbers.</param>
internal sealed record SupplyType(string Head, params OutletType[] Outlets)
{
    /// <summary>Whether each outlet has a return of its own.</summary>
    public bool IsIsolated { get; init; }

    /// <summary>What it gives in all, in milliwatts; null when nothing is printed.</summary>
    public int? TotalMilliwatts { get; init; }

    /// <summary>What it gives in all, in milliamps; null when nothing is printed.</summary>
    public int? TotalMilliamps { get; init; }

    /// <summary>What each of its banks, A and B, gives in all, in milliamps; null when it has none.</summary>
    public int? BankMilliamps { get; init; }

    /// <summary>How often it is met, against others.</summary>
    public int Weight { get; init; } = 4;
}
