using System.Collections.Immutable;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>Where a load is plugged in now: leaving it there is no move.</summary>
/// <param name="Feed">The present feed as the rig has it.</param>
/// <param name="Index">The feed's place in the present wiring.</param>
/// <param name="Outlets">
/// The places of its outlets among the rig's outlets, one or two, each with the voltage it is set to; null where nothing tells that.
/// </param>
/// <param name="Lead">The id of the lead; null for a plain one, be it listed or not.</param>
/// <param name="IsShared">
/// Whether several loads are or could be on the feed: then it matters which outlet it is even where others are alike.
/// </param>
internal sealed record LoadHome(
    Feed Feed, int Index, ImmutableArray<(int Outlet, Volts? Volts)> Outlets, string? Lead, bool IsShared)
{
    /// <summary>Whether a feed of a plan is, or may be taken to be, the present one.</summary>
    /// <param name="joined">How its outlets are joined.</param>
    /// <param name="parts">Its outlets as groups, one for each leg.</param>
    /// <param name="leads">The leads of its kind; null for plain ones.</param>
    public bool IsAt(Joint joined, IReadOnlyList<SourcePart> parts, ImmutableArray<string>? leads)
    {
        if (joined != Feed.Joined || (Lead is null ? leads is not null : leads?.Contains(Lead) != true))
            return false;
        return joined switch
        {
            Joint.Series => (Is(0, parts[0]) && Is(1, parts[1])) || (Is(1, parts[0]) && Is(0, parts[1])),
            Joint.Parallel => Is(0, parts[0]) && Is(1, parts[0]),
            _ => Is(0, parts[0]),
        };
    }

    /// <summary>The present outlet that stands in a place of a feed which is at home.</summary>
    /// <param name="place">The place among the feed's outlets.</param>
    /// <param name="parts">All of them.</param>
    public int OutletAt(int place, IReadOnlyList<SourcePart> parts)
    {
        var isInOrder = Outlets.Length == 1 || (Is(0, parts[0]) && Is(1, parts[^1]));
        return Outlets[isInOrder ? place : 1 - place].Outlet;
    }

    private bool Is(int place, SourcePart part) =>
        part.Group.Members.Contains(Outlets[place].Outlet) && part.Setting.Volts == Outlets[place].Volts;
}
