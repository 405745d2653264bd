using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>What a label says of the side that is joined to ground, so far.</summary>
internal record struct GroundMarks(bool Negative, bool Positive, Place Place)
{
    /// <summary>The field: contradicting words are ambiguous.</summary>
    public readonly Field<GroundSide> Field => (Negative, Positive) switch
    {
        (true, true) => Field<GroundSide>.Ambiguous([GroundSide.Negative, GroundSide.Positive], Place),
        (true, false) => Field<GroundSide>.Read(GroundSide.Negative, Place),
        (false, true) => Field<GroundSide>.Read(GroundSide.Positive, Place),
        _ => Field<GroundSide>.Absent,
    };

    /// <summary>Adds what one phrase says.</summary>
    public void Add(bool positive, Place place)
    {
        Place = Negative || Positive ? Place.Union(place) : place;
        Negative |= !positive;
        Positive |= positive;
    }
}
