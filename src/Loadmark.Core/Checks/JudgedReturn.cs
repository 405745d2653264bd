using System.Collections.Immutable;
using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks;

/// <summary>A return with what its loads are to one another.</summary>
/// <param name="Group">The return.</param>
/// <param name="Occupants">What each of its loads is there, in their order.</param>
/// <param name="Occupancy">What they do to one another.</param>
internal sealed record JudgedReturn(ReturnGroup Group, ImmutableArray<Occupant> Occupants, ReturnOccupancy Occupancy)
{
    /// <summary>Judges a return.</summary>
    /// <param name="group">The return.</param>
    /// <param name="signal">Whose grounds meet over audio leads.</param>
    public static JudgedReturn Of(ReturnGroup group, SignalPath signal) =>
        new(group, [.. group.Loads.Select(signal.OccupantOf)], signal.OccupancyOf(group));

    /// <summary>The tags of those of its loads that something holds of, in their order.</summary>
    /// <param name="holds">What is to hold.</param>
    public List<string> IdsWhere(Func<Occupant, bool> holds)
    {
        var ids = new List<string>();
        for (var place = 0; place < Occupants.Length; place++)
        {
            if (holds(Occupants[place]))
                ids.Add(Group.Loads[place].Id);
        }

        return ids;
    }
}
