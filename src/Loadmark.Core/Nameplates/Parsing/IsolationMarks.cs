namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>What a label says of isolation, so far.</summary>
internal record struct IsolationMarks(bool Isolated, bool Common, Place Place)
{
    /// <summary>The field: contradicting words are ambiguous.</summary>
    public readonly Field<bool> Field => (Isolated, Common) switch
    {
        (true, true) => Field<bool>.Ambiguous([true, false], Place),
        (true, false) => Field<bool>.Read(true, Place),
        (false, true) => Field<bool>.Read(false, Place),
        _ => Field<bool>.Absent,
    };

    /// <summary>Whether the label says neither that outlets are isolated nor that they share a return.</summary>
    public readonly bool IsEmpty => !Isolated && !Common;

    /// <summary>Adds one word on isolation.</summary>
    public void Add(bool isolated, Place place)
    {
        Place = IsEmpty ? place : Place.Union(place);
        Isolated |= isolated;
        Common |= !isolated;
    }
}
