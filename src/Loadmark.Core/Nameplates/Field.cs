using System.Collections.Immutable;

namespace Loadmark.Core.Nameplates;

/// <summary>One field of a nameplate: what it says, or that it does not say, and where.</summary>
/// <typeparam name="T">The type of the field's value.</typeparam>
public readonly struct Field<T>
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

    /// <summary>Where the text says it; meaningless when <see cref="FieldState.Absent"/>.</summary>
    public Place Place { get; }

    /// <summary>The value when <see cref="FieldState.Read"/>, else null.</summary>
    public T? Value => State == FieldState.Read ? ValueOrDefault : null;

    /// <summary>The ways to take an ambiguous field, at least two; empty otherwise.</summary>
    public ImmutableArray<T> Candidates => _candidates.IsDefault ? [] : _candidates;

    private T ValueOrDefault { get; }

    /// <summary>A field that was read.</summary>
    public static Field<T> Read(T value, Place place) => new(FieldState.Read, value, default, place);

    /// <summary>A field that can be taken in several ways.</summary>
    public static Field<T> Ambiguous(ImmutableArray<T> candidates, Place place) => new(FieldState.Ambiguous, default, candidates, place);

    /// <summary>A field that is spoken of but makes no sense.</summary>
    public static Field<T> Unreadable(Place place) => new(FieldState.Unreadable, default, default, place);
}
