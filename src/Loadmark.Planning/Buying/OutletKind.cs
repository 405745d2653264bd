using System.Collections.Immutable;
using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Buying;

/// <summary>
/// Outlets of one supply that are alike, as the relaxed model sees them. Whatever a plan may do is allowed here too; some of
/// what it must not may be.
/// </summary>
internal sealed class OutletKind
{
    /// <summary>Covers the last digits of divisions, which the rules forgive.</summary>
    public const decimal Forgiven = 1.000000001m;

    private OutletKind(OutletRating rating, SupplyRating supply, IReadOnlyCollection<LoadRating> loads, bool mustBeCertain, int count)
    {
        Rating = rating;
        Settings = [.. Setting.Of(rating, supply, loads)];
        Points = [.. Settings.Select(setting => FeedPoint.At(rating, setting.Standing))];
        MustBeCertain = mustBeCertain;
        Count = count;
    }

    /// <summary>What each of them gives.</summary>
    public OutletRating Rating { get; }

    /// <summary>The voltages that a plan would set it to.</summary>
    public ImmutableArray<Setting> Settings { get; }

    /// <summary>For each of them what stands at its plug.</summary>
    public ImmutableArray<FeedPoint> Points { get; }

    /// <summary>Whether only what is known to suit a load may feed that load: true of what is to be bought.</summary>
    public bool MustBeCertain { get; }

    /// <summary>How many one supply has.</summary>
    public int Count { get; }

    /// <summary>What the outlet bears for a moment, in amps; null where nothing is stated.</summary>
    public decimal? Surge => Rating.Outlet.Surge?.Current.Value;

    /// <summary>The kinds of outlet that a supply has.</summary>
    /// <param name="ratings">The ratings of its outlets.</param>
    /// <param name="supply">The supply.</param>
    /// <param name="loads">All loads of the rig.</param>
    /// <param name="mustBeCertain">Whether only what is known to suit a load may feed it.</param>
    public static IEnumerable<OutletKind> Of(
        IEnumerable<OutletRating> ratings, SupplyRating supply, IReadOnlyCollection<LoadRating> loads, bool mustBeCertain) => ratings
        .GroupBy(static rating => rating.Outlet with { Id = "" })
        .Select(alike => new OutletKind(alike.First(), supply, loads, mustBeCertain, alike.Count()));

    /// <summary>How a load may be fed from such an outlet, alone or with others; null when it may not.</summary>
    public KindFit? FitOf(LoadRating load, LeadStock leads)
    {
        decimal? least = null;
        var (reverses, adapts) = (true, true);
        for (var place = 0; place < Settings.Length; place++)
        {
            foreach (var ends in leads.Ends)
            {
                if (!Suits(place, ends, load) || !Bears(Settings[place], load))
                    continue;
                least = Math.Min(least ?? Settings[place].Basis.Value, Settings[place].Basis.Value);
                reverses &= ends.Reverses;
                adapts &= ends != LeadEnds.Plain;
            }
        }

        return least is { } volts ? new KindFit(reverses, adapts, volts) : null;
    }

    /// <summary>Whether a load may be fed at a setting, whatever it draws.</summary>
    /// <param name="setting">The place of the setting.</param>
    /// <param name="load">The load.</param>
    /// <param name="leads">The leads on hand.</param>
    public bool SuitsAt(int setting, LoadRating load, LeadStock leads) => leads.Ends.Any(ends => Suits(setting, ends, load));

    /// <summary>Whether a lead makes the outlet suit a load, at some setting, that it does not suit over a plain one.</summary>
    /// <param name="ends">What the lead does to polarity and plug.</param>
    /// <param name="load">The load.</param>
    public bool IsHelpedBy(LeadEnds ends, LoadRating load) =>
        Enumerable.Range(0, Settings.Length).Any(place => Suits(place, ends, load) && !Suits(place, LeadEnds.Plain, load));

    /// <summary>
    /// What is not known, or is at odds, where a load might be fed over a plain lead but is not known to suit: clauses in a row, as
    /// <see cref="Suitability"/> has them. Null where it suits, and where it is known not to.
    /// </summary>
    public string? DoubtsOf(LoadRating load)
    {
        foreach (var point in Points)
        {
            var fit = Suitability.Of(point, load);
            if (fit.Answer != Fit.No && fit.IsDoubtful)
                return string.Join(", ", fit.Reasons(point, load));
        }

        return null;
    }

    private bool Suits(int setting, LeadEnds ends, LoadRating load) => ends.CostOf(Points[setting], load, MustBeCertain) is not null;

    private bool Bears(Setting setting, LoadRating load)
    {
        if (setting.Limit is not { } limit)
            return true;
        var draw = LoadDraw.Least(load, setting.Basis);
        var most = limit * Forgiven;
        return draw.Run <= most && draw.Start <= Math.Max(most, (Surge ?? 0) * Forgiven);
    }
}
