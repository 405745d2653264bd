using System.Collections.Immutable;

namespace Loadmark.Core.Nameplates;

/// <summary>One field of a nameplate: what it says, or that it does not say, and where.</summary>
/// <typeparam name="T">The type of the field's value.</typeparam>
public readonly struct Field<T> : IEquatable<Field<T>>
    where T : struct
{
    private readonly ImmutableArray<T> _candidates;

    private Field(FieldState state, T value, ImmutableArray<T> candidates, Place place)
    {
        State = state;
        ValueOrDefault = value;
        _candidates = candidates;
        Place = place;
    }

    /// <summary>A field the text says nothing of.</summary>
    public static Field<T> Absent => default;

    /// <summary>How reading went.</summary>
    public FieldState State { get; }

    /// <summary>Where the text says what the field has; meaningless when <see cref="FieldState.Absent"/>.</summary>
    public Place Place { get; }

    /// <summary>The value when <see cref="FieldState.Read"/>, else null.</summary>
    public T? Value => State == FieldState.Read ? ValueOrDefault : null;

    /// <summary>
    /// The ways to take an ambiguous field, at least two, or one that is itself in doubt (letters printed like digits); empty otherwise.
    /// </summary>
    public ImmutableArray<T> Candidates => _candidates.IsDefault ? [] : _candidates;

    private T ValueOrDefault { get; }

    /// <summary>Whether both say the same, at the same place.</summary>
    public static bool operator ==(Field<T> left, Field<T> right) => left.Equals(right);

    /// <summary>Whether two fields differ.</summary>
    public static bool operator !=(Field<T> left, Field<T> right) => !left.Equals(right);

    /// <summary>A field that was read.</summary>
    public static Field<T> Read(T value, Place place) => new(FieldState.Read, value, default, place);

    /// <summary>A field that can be taken in several ways.</summary>
    public static Field<T> Ambiguous(ImmutableArray<T> candidates, Place place) => new(FieldState.Ambiguous, default, candidates, place);

    /// <summary>A field that is spoken of but makes no sense.</summary>
    public static Field<T> Unreadable(Place place) => new(FieldState.Unreadable, default, default, place);

    /// <summary>Whether both say the same, at the same place.</summary>
    public bool Equals(Field<T> other) =>
        State == other.State && Place == other.Place && EqualityComparer<T>.Default.Equals(ValueOrDefault, other.ValueOrDefault)
        && Candidates.AsSpan().SequenceEqual(other.Candidates.AsSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Field<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(State, ValueOrDefault, Place, Candidates.Length);
}
