using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>What a label says of direct and alternating, so far.</summary>
internal record struct FormMarks(bool Direct, bool Alternating, Place Place)
{
    /// <summary>Whether the label says neither d.c. nor a.c.</summary>
    public readonly bool IsEmpty => !Direct && !Alternating;

    /// <summary>The field: both claimed is ambiguous.</summary>
    public readonly Field<SupplyForm> Field => (Direct, Alternating) switch
    {
        (true, true) => Field<SupplyForm>.Ambiguous([SupplyForm.Direct, SupplyForm.Alternating], Place),
        (true, false) => Field<SupplyForm>.Read(SupplyForm.Direct, Place),
        (false, true) => Field<SupplyForm>.Read(SupplyForm.Alternating, Place),
        _ => Field<SupplyForm>.Absent,
    };

    /// <summary>Adds one mark. The place stays the first mark's unless the new one contradicts it.</summary>
    public void Add(bool direct, Place place)
    {
        var repeats = direct ? Direct : Alternating;
        Place = IsEmpty ? place : repeats ? Place : Place.Union(place);
        Direct |= direct;
        Alternating |= !direct;
    }

    /// <summary>Adds all marks of <paramref name="other"/>.</summary>
    public void Add(FormMarks other)
    {
        if (other.Direct)
            Add(direct: true, other.Place);
        if (other.Alternating)
            Add(direct: false, other.Place);
    }
}
