using System.Collections.Immutable;
using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Problem;

/// <summary>Outlets that are alike in everything a plan looks at.</summary>
internal sealed class OutletGroup(int index, OutletRating rating, string? sharedReturn, ImmutableArray<Setting> settings, long capacity)
{
    /// <summary>The group's place among the groups of outlets, from 0.</summary>
    public int Index { get; } = index;

    /// <summary>What each of them gives.</summary>
    public OutletRating Rating { get; } = rating;

    /// <summary>The return that the outlets share with others; null when each outlet has its own.</summary>
    public string? SharedReturn { get; } = sharedReturn;

    /// <summary>The voltages that the outlets can be set to, each once.</summary>
    public ImmutableArray<Setting> Settings { get; } = settings;

    /// <summary>All that a plan looks at in each of them, but for whose it is.</summary>
    public required string Look { get; init; }

    /// <summary>Whether the outlets are of several supplies, of which it does not matter whose is used.</summary>
    public required bool IsOfSeveralSupplies { get; init; }

    /// <summary>Whether the outlets feed only loads that they are known to suit: money is not spent on what may not suit.</summary>
    public required bool MustBeCertain { get; init; }

    /// <summary>
    /// Whether something is plugged in here now over a listed lead, so that feeds from here are counted apart from those from elsewhere.
    /// </summary>
    public bool IsHome { get; set; }

    /// <summary>What keeps apart the sources of the group from others that give the same; -1 where nothing does.</summary>
    public int Apart => IsHome ? Index : -1;

    /// <summary>The board whose loads alone the outlets feed, beside those of none; null where they may feed any.</summary>
    public string? Board { get; init; }

    /// <summary>The supply that the outlets are of, where the plan feeds that supply; null otherwise.</summary>
    public string? PlannedInput { get; init; }

    /// <summary>
    /// Whether the outlets feed a load in no case, whatever suits: it is of another board, or the input of their own supply, which they
    /// would then feed themselves.
    /// </summary>
    /// <param name="load">What draws.</param>
    public bool Bars(LoadGroup load) =>
        Boards.AreApart(Board, load.Board) || (load.IsInput && load.Rating.Load.Id == PlannedInput);

    /// <summary>The largest limit of the outlets' settings, in millionths of an amp; zero when nothing tells.</summary>
    public long Capacity { get; } = capacity;

    /// <summary>The places of the group's outlets among the rig's outlets, ascending.</summary>
    public List<int> Members { get; } = [];

    /// <summary>Makes one group of several that are alike, of whichever supplies.</summary>
    public static OutletGroup Pool(int index, IReadOnlyList<OutletGroup> alike)
    {
        var first = alike[0];
        var pooled = new OutletGroup(index, first.Rating, first.SharedReturn, first.Settings, first.Capacity)
        {
            Look = first.Look,
            IsOfSeveralSupplies = true,
            MustBeCertain = first.MustBeCertain,
            PlannedInput = first.PlannedInput,
            Board = first.Board,
            IsHome = alike.Any(static group => group.IsHome),
        };
        pooled.Members.AddRange(alike.SelectMany(static group => group.Members));
        return pooled;
    }

    /// <summary>How many there are.</summary>
    public int Count => Members.Count;

    /// <summary>Whether there is something to set.</summary>
    public bool HasChoice => Rating.Modes is not [{ Volts: null } or { Volts.IsSingle: true }];
}
