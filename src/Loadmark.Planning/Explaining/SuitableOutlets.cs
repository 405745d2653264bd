using Loadmark.Core.Checks;
using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;
using Loadmark.Planning.Search;

namespace Loadmark.Planning.Explaining;

/// <summary>Which outlets could feed a load if it were alone, asked of the rules, and what stands against the others.</summary>
internal static class SuitableOutlets
{
    /// <summary>The outlets that feed the load over a plain lead without harm or failure.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="load">The load.</param>
    /// <param name="only">The supplies that may be used; null for all.</param>
    /// <param name="mustBeCertain">Whether they must be known to suit; else it is enough that they are not known not to.</param>
    /// <param name="acrossBoards">Whether supplies of other boards may feed it.</param>
    public static List<OutletRef> For(
        Rig rig, Load load, IReadOnlySet<string>? only, bool mustBeCertain = false, bool acrossBoards = false)
    {
        var rating = LoadRating.Of(load);
        return
        [
            .. OutletsOf(rig, only)
                .Where(
                    outlet => (acrossBoards || !AreApart(outlet, load)) && Setting.Of(outlet.Rating, outlet.Supply, [rating])
                        .Any(setting => Feeds(rig, rating, outlet, setting, mustBeCertain)))
                .Select(static outlet => outlet.Rating.Reference),
        ];
    }

    /// <summary>
    /// What stands against each outlet as it suits best, outlets with the same reasons together: "wall/1: it gives 18 V, tuner-1 is made
    /// for 9 V". Empty where nothing but currents does.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="load">The load.</param>
    /// <param name="only">The supplies that may be used; null for all.</param>
    /// <param name="acrossBoards">Whether supplies of other boards may feed it.</param>
    public static IEnumerable<string> Against(Rig rig, Load load, IReadOnlySet<string>? only, bool acrossBoards = false)
    {
        var rating = LoadRating.Of(load);
        return OutletsOf(rig, only)
            .Select(outlet => (
                outlet.Name,
                Because: !acrossBoards && AreApart(outlet, load)
                    ? $"it is of the board {outlet.Rating.Supply.Board}"
                    : Because(outlet, rating)))
            .Where(static pair => pair.Because.Length > 0)
            .GroupBy(static pair => pair.Because, StringComparer.Ordinal)
            .Select(static alike => $"{string.Join(", ", alike.Select(static pair => pair.Name))}: {alike.Key}");
    }

    private static IEnumerable<WiredOutlet> OutletsOf(Rig rig, IReadOnlySet<string>? only) =>
        WiredRig.Of(rig with { Wired = null }).Outlets.Items.Where(outlet => only?.Contains(outlet.Rating.Supply.Id) is not false);

    private static bool AreApart(WiredOutlet outlet, Load load) => Boards.AreApart(outlet.Rating.Supply.Board, load.Board);

    private static string Because(WiredOutlet outlet, LoadRating load)
    {
        var best = Setting.Of(outlet.Rating, outlet.Supply, [load]).Select(setting => FeedPoint.At(outlet.Rating, setting.Standing))
            .Select(point => (Point: point, Fit: Suitability.Of(point, load))).Where(static one => one.Fit.Answer == Fit.No)
            .Select(one => new { one.Point, Reasons = Decisive(one.Fit).Reasons(one.Point, load).ToList() })
            .MinBy(static one => one.Reasons.Count);
        if (best is null)
            return "";
        var mends = Suitability.Of(best.Point.Over(reverses: true, plug: null), load).Answer != Fit.No;
        return $"{string.Join(", ", best.Reasons)}{(mends ? " (a reversing lead mends it)" : "")}";
    }

    /// <summary>The same judgement without what is not known beside what decides.</summary>
    private static Suitability Decisive(Suitability fit) =>
        fit with { Form = Known(fit.Form), Polarity = Known(fit.Polarity), NotTooHigh = Known(fit.NotTooHigh) };

    private static Fit Known(Fit fit) => fit == Fit.NotKnown ? Fit.Yes : fit;

    private static bool Feeds(Rig rig, LoadRating load, WiredOutlet outlet, Setting setting, bool mustBeCertain)
    {
        if (LoadCost.Of(Suitability.Of(FeedPoint.At(outlet.Rating, setting.Standing), load), mustBeCertain) is null)
            return false;
        var feed = new Feed
        {
            From = [outlet.Rating.Reference],
            At = setting.Volts is { } volts ? [volts] : [],
            To = [load.Id],
        };
        var alone =
            rig with { Mains = null, Loads = [load.Load], Supplies = [outlet.Rating.Supply], Leads = [], Wired = (ValueList<Feed>)[feed] };
        return !NameplateCheck.Of(alone).Findings.Items.Any(Candidate.Refuses);
    }
}
