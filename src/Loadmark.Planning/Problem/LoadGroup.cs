using System.Collections.Immutable;
using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>
/// Loads that are alike in everything a plan looks at; or, where some were merged, in everything but what they draw, and
/// then each counts with the least draw of them.
/// </summary>
internal sealed class LoadGroup(int index, LoadRating rating, bool isInSignal)
{
    /// <summary>The priority of a load that gives none.</summary>
    private const int CommonPriority = 2;

    private readonly Dictionary<Volts, LoadDraw> _draws = [];
    private readonly List<LoadGroup> _parts = [];

    /// <summary>The group's place among the groups of loads, from 0.</summary>
    public int Index { get; } = index;

    /// <summary>What each of them needs, with the highest draw where it depends on the voltage.</summary>
    public LoadRating Rating { get; } = rating;

    /// <summary>
    /// Whether their grounds meet those of others over audio leads, in a rig where a load may take alternating current; it matters there
    /// only.
    /// </summary>
    public bool IsInSignal { get; } = isInSignal;

    /// <summary>
    /// Whether the group is the input of a supply that the plan feeds: nothing hears it, and it is fed before all others.
    /// </summary>
    public bool IsInput => Darkness > 1;

    /// <summary>How many loads each load of the group counts as where it stays dark.</summary>
    public int Darkness { get; init; } = 1;

    /// <summary>
    /// Where each of them is plugged in now, as that of the first of them: alike ones are on outlets that are alike. Null where none is, or
    /// where no plan could leave it there.
    /// </summary>
    public LoadHome? Home { get; init; }

    /// <summary>Whether each of them is wired now, so that feeding it otherwise, or not, counts as a move.</summary>
    public bool IsWired { get; init; }

    /// <summary>The board of each of them, of whose supplies alone it is fed, beside those of none; null where any may feed it.</summary>
    public string? Board { get; init; }

    /// <summary>The places of the group's loads among the rig's loads, ascending.</summary>
    public List<int> Members { get; } = [];

    /// <summary>Whether loads with different draws were merged.</summary>
    public bool IsMerged => _parts.Count > 1;

    /// <summary>How many there are.</summary>
    public int Count => Members.Count;

    /// <summary>Whether the running draw is known; a load whose draw nothing tells is fed alone.</summary>
    public bool IsDrawKnown => Rating.Running is not null;

    /// <summary>1 to 3.</summary>
    public int Priority => PriorityOf(Rating.Load.Priority);

    /// <summary>Whether each makes a finding of noise of any return that it shares.</summary>
    public bool MindsCompany { get; } = Occupant.Of(rating, isReversed: false, SupplyForm.Direct, isInSignal).MindsCompany;

    /// <summary>Whether each of them, if it minds company, is kept from all: no wiring may hum.</summary>
    public bool IsKeptApart { get; init; }

    /// <summary>What each of them is to others that share its return.</summary>
    /// <param name="point">What stands at the outlets' plug.</param>
    /// <param name="isReversed">Whether the lead exchanges centre and sleeve.</param>
    public Occupant OccupantAt(FeedPoint point, bool isReversed)
    {
        if (IsInput)
            return Occupant.Unheard;
        var form = point.Form is { IsKnown: true, Value: SupplyForm.Alternating } ? SupplyForm.Alternating : SupplyForm.Direct;
        var occupant = Occupant.Of(Rating, isReversed, form, IsInSignal);
        return IsKeptApart ? occupant.KeptApart : occupant;
    }

    /// <summary>Whether feeding each of them so is a move.</summary>
    /// <param name="joined">How the outlets are joined.</param>
    /// <param name="parts">The outlets, one for each leg.</param>
    /// <param name="leads">The leads of the feed's kind; null for plain ones.</param>
    public bool IsMovedBy(Joint joined, IReadOnlyList<SourcePart> parts, ImmutableArray<string>? leads) =>
        IsWired && Home?.IsAt(joined, parts, leads) is not true;

    /// <summary>What each of them draws.</summary>
    /// <param name="fed">The voltage it is fed; its draw may depend on it.</param>
    public LoadDraw DrawAt(Volts fed)
    {
        if (_draws.TryGetValue(fed, out var draw))
            return draw;

        draw = _parts.Count == 0
            ? LoadDraw.Of(LoadRating.Of(Rating.Load, fed))
            : _parts.Select(part => part.DrawAt(fed)).Aggregate(static (one, other) => one.Least(other));
        _draws.Add(fed, draw);
        return draw;
    }

    /// <summary>Makes one group of several.</summary>
    public static LoadGroup Merge(int index, List<LoadGroup> parts)
    {
        var first = parts[0];
        var merged = new LoadGroup(index, first.Rating, first.IsInSignal)
        {
            Darkness = first.Darkness,
            Home = first.Home,
            IsWired = first.IsWired,
            Board = first.Board,
            IsKeptApart = first.IsKeptApart,
        };
        merged._parts.AddRange(parts);
        merged.Members.AddRange(parts.SelectMany(static part => part.Members).Order());
        return merged;
    }

    /// <summary>A priority with the default for one that is not given.</summary>
    public static int PriorityOf(int? given) => given ?? CommonPriority;

    /// <summary>What must be equal for two loads to be alike.</summary>
    public static object Key(LoadRating rating, bool isInSignal) => (
        (rating.Form.Value, rating.Form.IsKnown, rating.TakesEitherForm, rating.Voltage.Value, rating.Voltage.IsKnown),
        (rating.Running?.Value, rating.Starting?.Value, rating.StartDuration),
        (rating.Polarity.Value, rating.Polarity.IsKnown, rating.TakesEitherForm && rating.Polarity.IsAssumed),
        (rating.Plug.Value, rating.Plug.IsKnown, rating.Ground),
        (rating.IsDigital == true, VoltageBand.IsAnalog(rating), rating.Load.Isolate, isInSignal, PriorityOf(rating.Load.Priority)),
        rating.DrawVaries ? (rating.Load.Label, rating.Load.Watts) : default);
}
