using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Tests.Oracle.Naive;

/// <summary>Lists every way to feed something in a rig, one for each outlet or pair, setting and single lead.</summary>
internal sealed class NaiveFeeds(Rig rig, WiredRig wired, IReadOnlySet<string>? only)
{
    public IEnumerable<NaiveFeed> All()
    {
        foreach (var feed in wired.Feeds)
            yield return new NaiveFeed([.. feed.Outlets], feed.Joined, [.. feed.Outlets.Select(outlet => outlet.Volts)], feed.Lead, 0) { Pinned = feed.Feed };

        var idle = NameplateCheck.Of(wired).Findings.Items.Where(finding => finding.Rule == RuleId.MainsMismatch && finding.Severity >= Severity.Fails)
            .Select(finding => finding.Subjects[0]).ToHashSet(StringComparer.Ordinal);
        var free = wired.Outlets.Items.Where(outlet => outlet.Feeds.Count == 0 && !idle.Contains(outlet.Rating.Supply.Id)
            && only?.Contains(outlet.Rating.Supply.Id) is not false).ToList();
        var leads = rig.Leads.Items.SelectMany(lead => Enumerable.Range(0, Math.Max(0, (lead.Count ?? (lead.Type == LeadType.Straight ? wired.Loads.Count : 1)) - wired.Feeds.Items.Count(feed => feed.Lead?.Id == lead.Id)))
            .Select(copy => (Lead: lead, Copy: copy))).ToList();
        var straight = leads.Where(lead => lead.Lead.Type is not (LeadType.Series or LeadType.Parallel)).ToList();
        foreach (var outlet in free)
        {
            Volts?[] settings = outlet.Rating.Modes is [{ Volts: null }] ? [null] : [.. SettingsOf(outlet).Select(static volts => (Volts?)volts)];
            foreach (var volts in settings)
            {
                yield return new NaiveFeed([outlet], Joint.None, [volts], null, 0);
                foreach (var (lead, copy) in straight)
                    yield return new NaiveFeed([outlet], Joint.None, [volts], lead, copy);
            }
        }

        foreach (var (lead, copy) in leads.Where(lead => lead.Lead.Type == LeadType.Series))
        {
            foreach (var (outlets, at) in SeriesPairs([.. free.Where(HasOwnReturn)]))
                yield return new NaiveFeed(outlets, Joint.Series, at, lead, copy);
        }

        foreach (var (lead, copy) in leads.Where(lead => lead.Lead.Type == LeadType.Parallel))
        {
            foreach (var (outlets, volts) in ParallelPairs(free))
                yield return new NaiveFeed(outlets, Joint.Parallel, [volts, volts], lead, copy);
        }
    }

    private IEnumerable<(WiredOutlet[] Outlets, Volts?[] At)> SeriesPairs(List<WiredOutlet> own)
    {
        foreach (var one in own)
        {
            foreach (var other in own)
            {
                if (one == other || !IsForJoining(one.Rating) || !IsForJoining(other.Rating)
                    || one.Rating.Polarity.Value != other.Rating.Polarity.Value)
                {
                    continue;
                }

                foreach (var first in SettingsOf(one))
                {
                    foreach (var second in SettingsOf(other))
                        yield return ([one, other], [first, second]);
                }
            }
        }
    }

    private IEnumerable<(WiredOutlet[] Outlets, Volts Volts)> ParallelPairs(List<WiredOutlet> free)
    {
        foreach (var one in free)
        {
            foreach (var other in free)
            {
                if (other.Index <= one.Index || !IsForJoining(one.Rating) || !IsForJoining(other.Rating) || !AreAlike(one.Rating, other.Rating))
                    continue;
                foreach (var volts in SettingsOf(one).Where(volts => one.Rating.ModeAt(volts)?.LimitAt(volts) is not null))
                    yield return ([one, other], volts);
            }
        }
    }

    /// <summary>The printed voltages, and within a range those that some load is printed for.</summary>
    private HashSet<Volts> SettingsOf(WiredOutlet outlet)
    {
        var settings = new HashSet<Volts>();
        foreach (var range in outlet.Rating.Modes.Select(mode => mode.Volts).OfType<QuantityRange<Volt>>())
        {
            settings.UnionWith([range.Low, range.High]);
            settings.UnionWith(wired.Loads.Items.SelectMany(load => new[] { load.Rating.Voltage.Value.Low, load.Rating.Voltage.Value.High }).Where(range.Contains));
        }

        return settings;
    }

    /// <summary>Only outlets of which it is known that they are d.c., and of which polarity, are joined.</summary>
    private static bool IsForJoining(OutletRating outlet) => outlet is { Form: { IsKnown: true, Value: SupplyForm.Direct }, Polarity.IsKnown: true };

    private bool HasOwnReturn(WiredOutlet outlet) => wired.Outlets.Items.Count(other => other.Rating.Return == outlet.Rating.Return) == 1;

    private static bool AreAlike(OutletRating one, OutletRating other) =>
        one.Supply.Id == other.Supply.Id && one.Modes.SequenceEqual(other.Modes) && one.Form.Value == other.Form.Value
        && one.Polarity.Value == other.Polarity.Value && one.Plug.Value == other.Plug.Value && one.Plug.IsKnown == other.Plug.IsKnown
        && (one.Isolated.Value && other.Isolated.Value || one.Return == other.Return)
        && one.Outlet.Bank == other.Outlet.Bank && one.Outlet.Surge == other.Outlet.Surge
        && one.Outlet.NoLoad == other.Outlet.NoLoad && one.Outlet.SourceOhms == other.Outlet.SourceOhms;
}
