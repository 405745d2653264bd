using Loadmark.Core.Gear;
using Loadmark.Web.Library;

namespace Loadmark.Answers;

/// <summary>A line of a list of gear.</summary>
/// <param name="Gear">The piece.</param>
/// <param name="Rigs">How many rigs have it.</param>
internal sealed record ListedGear(ShelfGear Gear, int Rigs)
{
    /// <summary>How many rigs have a piece.</summary>
    public static int RigsOf(ShelfGear gear, IReadOnlyDictionary<(GearKind Kind, string TagKey), int> uses) =>
        uses.TryGetValue((gear.Kind, GearTag.KeyOf(gear.Tag)), out var count) ? count : 0;
}
