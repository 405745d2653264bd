using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Library;

namespace Loadmark.Workshop.Library;

/// <summary>Uses the library's gear in a rig.</summary>
public static class GearUse
{
    /// <summary>
    /// The rig with a piece of gear in it: after those that it has, or in the place of one with the same tag, whose feeds then stay.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="fromLibrary">Whether the rig goes on taking its figures from the library, so that they change with it; else they are
    /// copied. Of a lead they always are.</param>
    public static Rig Put(Rig rig, GearPiece piece, bool fromLibrary)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(piece);
        if (piece.Load is { } load)
        {
            var taken = load with { FromLibrary = fromLibrary ? load : null };
            return rig with { Loads = PutAmong(rig.Loads, taken, static one => one.Id, static (one, id) => one with { Id = id }) };
        }

        if (piece.Supply is { } supply)
        {
            var taken = supply with { FromLibrary = fromLibrary ? supply : null };
            return rig with { Supplies = PutAmong(rig.Supplies, taken, static one => one.Id, static (one, id) => one with { Id = id }) };
        }

        return rig with { Leads = PutAmong(rig.Leads, piece.Lead!, static one => one.Id, static (one, id) => one with { Id = id }) };
    }

    /// <summary>The piece of that kind and tag that a rig has, capitals aside; null when it has none.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="kind">The kind.</param>
    /// <param name="tag">The tag.</param>
    public static GearPiece? Find(Rig rig, GearKind kind, string tag)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return GearPiece.AllOf(rig).FirstOrDefault(piece => piece.Kind == kind && GearTag.KeyOf(piece.Tag) == GearTag.KeyOf(tag));
    }

    private static ValueList<T> PutAmong<T>(ValueList<T> list, T thing, Func<T, string> idOf, Func<T, string, T> withId)
    {
        var at = list.Items.ToList().FindIndex(one => GearTag.KeyOf(idOf(one)) == GearTag.KeyOf(idOf(thing)));

        // The rig's own spelling of the tag stays, since its wiring refers to it.
        return at < 0 ? [.. list.Items, thing] : new ValueList<T>(list.Items.SetItem(at, withId(thing, idOf(list.Items[at]))));
    }
}
