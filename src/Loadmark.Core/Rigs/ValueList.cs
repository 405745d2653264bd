using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Loadmark.Core.Rigs;

/// <summary>An immutable list that is equal to another when its items are, so that records holding it compare by value.</summary>
/// <typeparam name="T">The items' type.</typeparam>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public readonly struct ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly ImmutableArray<T> _items;

    /// <summary>Wraps an immutable array; no copy is made.</summary>
    public ValueList(ImmutableArray<T> items) => _items = items;

    /// <summary>How many items there are.</summary>
    public int Count => _items.IsDefault ? 0 : _items.Length;

    /// <summary>The items as an array.</summary>
    public ImmutableArray<T> Items => _items.IsDefault ? [] : _items;

    /// <summary>The item at <paramref name="index"/>, from 0.</summary>
    public T this[int index] => Items[index];

    /// <summary>Whether both lists hold equal items in the same order.</summary>
    public static bool operator ==(ValueList<T> left, ValueList<T> right) => left.Equals(right);

    /// <summary>Whether the lists differ.</summary>
    public static bool operator !=(ValueList<T> left, ValueList<T> right) => !left.Equals(right);

    /// <summary>Enumerates without allocating.</summary>
    public ImmutableArray<T>.Enumerator GetEnumerator() => Items.GetEnumerator();

    IEnumerator<T> IEnumerable<T>.GetEnumerator() => ((IEnumerable<T>)Items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => ((IEnumerable)Items).GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(ValueList<T> other) => Items.AsSpan().SequenceEqual(other.Items.AsSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is ValueList<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var item in Items)
            hash.Add(item);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public override string ToString() => string.Join(", ", Items);
}

/// <summary>Makes value lists, so that collection expressions work: <c>ValueList&lt;int&gt; list = [1, 2];</c>.</summary>
public static class ValueList
{
    /// <summary>A list of the given items.</summary>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => new([.. items]);
}
