using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Explaining;

/// <summary>
/// Finds the smallest changes after which everything is fed: one thing more; where none does, two or three together; where these do not
/// either, as many as it takes, those left out that a short search can do without. Whatever is offered was planned, and the rules were
/// asked about the plan.
/// </summary>
internal sealed class MendFinder(PlanResult plan, RigTrials trials)
{
    private const int MostChanges = 5;

    /// <summary>The most things that are tried together in every combination.</summary>
    private const int MostTogether = 3;

    /// <summary>How many combinations are tried at the most.</summary>
    private const int MostCombinations = 200;

    /// <summary>The most sorts of outlets that combinations are made of.</summary>
    private const int MostOutletSorts = 4;

    /// <summary>The most leads of a kind that are put to many outlets, before what is needless is left out again.</summary>
    private const int MostLeads = 6;

    /// <summary>The most things that are left out one by one.</summary>
    private const int MostReduced = 40;

    private const int LongChain = 5;

    /// <summary>The share of the time after which no more combinations are tried.</summary>
    private const double ShareForCombinations = 0.85;

    private readonly List<PlanChange> _found = [];

    /// <summary>Of how many things each of those found is.</summary>
    private readonly List<int> _sizes = [];

    private Rig Rig => trials.Rig;

    private bool IsEnough => _found.Count == MostChanges || trials.IsOver;

    /// <summary>The changes, smallest first, a load taken off last.</summary>
    public List<PlanChange> Find()
    {
        var more = plan.Unfed.Items.Select(id => SmallChange.OutletFor(trials.LoadOf(id), Rig.HeadroomInForce)).ToList();
        List<SmallChange> sorts = [.. SmallChange.Leads, .. more.DistinctBy(static change => change.Name)];
        foreach (var change in sorts)
            Try([change], isBrief: false);
        if (_found.Count == 0)
            Combine([.. SmallChange.Leads, .. more.DistinctBy(static change => change.Name).Take(MostOutletSorts)]);
        if (_found.Count == 0)
        {
            foreach (var lead in SmallChange.Leads.Where(static one => one.Lead is { Type: LeadType.Reversing } or { Plugs: LongChain }))
                Reduce([.. Enumerable.Repeat(lead, Math.Min(more.Count, MostLeads)), .. more]);
        }

        if (more.Count > 1)
            Try(more, isBrief: false);
        TakeOff();
        return _found;
    }

    /// <summary>Plans with changes, and keeps them where they mend it: the fewer before the more.</summary>
    private void Try(List<SmallChange> changes, bool isBrief)
    {
        if (IsEnough || trials.Mended(SmallChange.Make(Rig, changes), isBrief) is not { } mended)
            return;
        var text = SmallChange.Words(changes) + Sharing(mended);
        if (_found.Exists(other => other.Text == text))
            return;
        var place = _sizes.FindIndex(size => size > changes.Count);
        place = place < 0 ? _sizes.Count : place;
        _sizes.Insert(place, changes.Count);
        _found.Insert(place, new PlanChange(text, SmallChange.Make(Rig, changes)));
    }

    /// <summary>
    /// Tries every two together, and where none does every three; those that could not be enough by their number are passed over.
    /// </summary>
    private void Combine(List<SmallChange> sorts)
    {
        var left = MostCombinations;
        for (var count = 2; count <= MostTogether && _found.Count == 0; count++)
        {
            foreach (var changes in Choose(sorts, 0, count).Where(IsEnoughFor))
            {
                if (IsEnough || trials.IsSpent(ShareForCombinations) || left-- == 0)
                    return;
                Try(changes, isBrief: true);
            }
        }
    }

    private static IEnumerable<List<SmallChange>> Choose(List<SmallChange> sorts, int from, int count)
    {
        if (count == 0)
            yield return [];
        for (var place = from; count > 0 && place < sorts.Count; place++)
        {
            foreach (var rest in Choose(sorts, place, count - 1))
                yield return [sorts[place], .. rest];
        }
    }

    /// <summary>Whether changes could feed as many loads as are proven to stay dark without them.</summary>
    private bool IsEnoughFor(List<SmallChange> changes)
    {
        var plugs = Rig.Leads.Items.Select(lead => lead.LoadPlugs ?? Rig.Loads.Count)
            .Concat(changes.Select(static change => change.Plugs)).Max();
        return changes.Sum(change => change.MostFed(plugs)) >= plan.Objective[0].Bound;
    }

    /// <summary>Leaves out of what mends it one after the other, outlets before leads, as long as the rest still does.</summary>
    private void Reduce(List<SmallChange> changes)
    {
        if (changes.Count > MostReduced || trials.Mended(SmallChange.Make(Rig, changes), isBrief: true) is null)
            return;
        for (var place = changes.Count - 1; place >= 0; place--)
        {
            if (trials.IsSpent(ShareForCombinations))
                return;
            var rest = changes.Where((_, index) => index != place).ToList();
            if (trials.Mended(SmallChange.Make(Rig, rest), isBrief: true) is not null)
                changes = rest;
        }

        Try(changes, isBrief: true);
    }

    /// <summary>Least important first; a load that a pinned feed holds stays.</summary>
    private void TakeOff()
    {
        var pinned = (Rig.Wired ?? []).Items.SelectMany(static feed => feed.To.Items).ToHashSet(StringComparer.Ordinal);
        foreach (var load in Rig.Loads.Items.Where(load => !pinned.Contains(load.Id)).OrderByDescending(static load => load.Priority ?? 2))
        {
            if (IsEnough)
                return;
            var without = Rig with { Loads = [.. Rig.Loads.Items.Where(other => other.Id != load.Id)] };
            if (trials.Mended(without) is not null)
                _found.Add(new PlanChange($"take {load.Id} off", without));
        }
    }

    /// <summary>Which loads share an outlet over leads that were added.</summary>
    private string Sharing(PlanResult mended)
    {
        var before = Rig.Leads.Items.Select(static lead => lead.Id).ToHashSet(StringComparer.Ordinal);
        var shared = (mended.Rig.Wired ?? []).Items.Where(feed => feed.To.Count > 1 && feed.Lead is { } lead && !before.Contains(lead))
            .Select(static feed => $"{Phrases.List([.. feed.To])} share {string.Join(" and ", feed.From)}").ToList();
        return shared.Count == 0 ? "" : $", so that {Phrases.List(shared)}";
    }
}
