namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>What a label says of regulation, so far.</summary>
internal record struct RegulationMarks(bool Regulated, bool Unregulated, bool Linear, Place Place)
{
    /// <summary>The field. "Linear" says how a supply is built, not whether it regulates: alone it leaves both open.</summary>
    public readonly Field<bool> Field => (Regulated, Unregulated, Linear) switch
    {
        (false, false, false) => Field<bool>.Absent,
        (true, false, _) => Field<bool>.Read(true, Place),
        (false, true, _) => Field<bool>.Read(false, Place),
        _ => Field<bool>.Ambiguous([true, false], Place),
    };

    /// <summary>Adds one word on regulation.</summary>
    /// <param name="sign">The word's sign.</param>
    /// <param name="place">Where it stands.</param>
    public void Add(char sign, Place place)
    {
        Place = Regulated || Unregulated || Linear ? Place.Union(place) : place;
        Regulated |= sign == Sign.Regulated;
        Unregulated |= sign == Sign.Unregulated;
        Linear |= sign == Sign.Linear;
    }
}
