namespace Loadmark.Planning.Buying;

/// <summary>How many of each useful offer.</summary>
internal sealed class Basket(int[] counts) : IEquatable<Basket>
{
    /// <summary>The counts, one for each offer.</summary>
    public IReadOnlyList<int> Counts { get; } = counts;

    /// <summary>The places of the offers that the basket has at least one of.</summary>
    public IEnumerable<int> Kinds => Enumerable.Range(0, Counts.Count).Where(offer => Counts[offer] > 0);

    /// <summary>The basket with one of an offer less.</summary>
    public Basket Without(int offer)
    {
        var less = Counts.ToArray();
        less[offer]--;
        return new Basket(less);
    }

    /// <summary>Whether the basket holds at least what another does.</summary>
    public bool Holds(Basket other) => Counts.Zip(other.Counts).All(static pair => pair.First >= pair.Second);

    /// <inheritdoc/>
    public bool Equals(Basket? other) => other is not null && Counts.SequenceEqual(other.Counts);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Basket);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var count in Counts)
            hash.Add(count);
        return hash.ToHashCode();
    }
}
