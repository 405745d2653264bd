namespace Loadmark.Planning.Problem;

/// <summary>Boards of one rig that keep to themselves.</summary>
internal static class Boards
{
    /// <summary>Whether a supply of one board is not to feed a load of the other; what is of no board goes with any.</summary>
    /// <param name="supply">The supply's board; null for none.</param>
    /// <param name="load">The load's board; null for none.</param>
    public static bool AreApart(string? supply, string? load) =>
        supply is not null && load is not null && !string.Equals(supply, load, StringComparison.OrdinalIgnoreCase);
}
