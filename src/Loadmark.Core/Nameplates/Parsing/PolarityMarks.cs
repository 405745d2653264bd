using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>What a label says of the centre contact, so far.</summary>
internal record struct PolarityMarks(bool Negative, bool Positive, Place Place)
{
    /// <summary>The field: contradicting words or an unclear drawing are ambiguous.</summary>
    public readonly Field<Polarity> Field => (Negative, Positive) switch
    {
        (true, true) => Field<Polarity>.Ambiguous([Polarity.CentreNegative, Polarity.CentrePositive], Place),
        (true, false) => Field<Polarity>.Read(Polarity.CentreNegative, Place),
        (false, true) => Field<Polarity>.Read(Polarity.CentrePositive, Place),
        _ => Field<Polarity>.Absent,
    };

    /// <summary>Whether the label says nothing of polarity.</summary>
    public readonly bool IsEmpty => !Negative && !Positive;

    /// <summary>Adds what one phrase or drawing says; both when it does not tell.</summary>
    public void Add(bool negative, bool positive, Place place)
    {
        Place = Negative || Positive ? Place.Union(place) : place;
        Negative |= negative;
        Positive |= positive;
    }
}
