using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks.Rules;

/// <summary>Outlets are joined in series although their returns are joined.</summary>
internal sealed class SeriesShort : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.SeriesShort;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source => "Kirchhoff's voltage law: the series lead joins one outlet's output to the other's return";

    protected override void Judge(NameplateCase subject, Report report)
    {
        var rig = subject.Rig;
        Dictionary<string, int>? uses = null;
        foreach (var feed in rig.Feeds)
        {
            if (feed.Joined != Joint.Series)
                continue;

            if (feed.Outlets.Any(outlet => outlet.Rating.Form.IsKnown && feed.Form.IsKnown && outlet.Rating.Form.Value != feed.Form.Value))
            {
                report.Add(
                    this,
                    Phrases.Subjects(feed),
                    $"{feed.OutletNames} are joined in series, one of direct and one of alternating current: the sum is neither.",
                    "d.c. ⎓ + a.c. ~",
                    "Join only outlets of one kind of current.");
                continue;
            }

            if (feed.Form is { IsKnown: true, Value: SupplyForm.Alternating })
            {
                report.Add(
                    this,
                    Severity.Margin,
                    Phrases.Subjects(feed),
                    $"{feed.OutletNames} are joined in series and alternating: whether their voltages add or cancel depends on their "
                    + "phase, which is not known.",
                    "phase not known",
                    "Measure the pair before plugging in, and exchange the contacts of one where they cancel.");
            }

            var shared = SharedReturn(feed);
            if (shared is not null)
            {
                report.Add(
                    this,
                    Phrases.Subjects(feed),
                    IsAssumed(feed)
                        ? $"{feed.OutletNames} are joined in series, and nothing says that they are isolated: "
                            + $"where they share the return of {shared}, one of them is shorted."
                        : $"{feed.OutletNames} are joined in series but share the return of {shared}: one of them is shorted.",
                    "output of one outlet joined to its own return",
                    "Join only outlets that each have a return of their own (isolated): with the supply unplugged, "
                    + "nothing conducts between either contact of the one and either contact of the other.");
            }
            else
            {
                JudgeOtherLoads(feed, uses ??= FeedsByReturn(rig), report);
            }
        }
    }

    private void JudgeOtherLoads(WiredFeed feed, Dictionary<string, int> uses, Report report)
    {
        var busy = new List<string>();
        foreach (var outlet in feed.Outlets)
        {
            if (uses[outlet.Rating.Return] > 1)
                busy.Add(outlet.Name);
        }

        if (busy.Count > 1)
        {
            report.Add(
                this,
                Phrases.Subjects(feed),
                $"{feed.OutletNames} are joined in series, and the returns of {Phrases.List(busy)} carry other loads: "
                + "the audio leads join those returns and short an outlet.",
                "two returns at different voltages joined over audio grounds",
                "Leave the outlets of a series pair to its own loads.");
        }
        else if (busy.Count == 1)
        {
            report.Add(
                this,
                Severity.Unsure,
                Phrases.Subjects(feed),
                $"The return of {busy[0]} carries other loads too: safe only if the series lead takes the load's 0 V from {busy[0]}, "
                + "else the audio leads short an outlet.",
                "which outlet gives the 0 V is not known",
                $"Measure before plugging in: the 0 V contact at the load's end must be joined to that of {busy[0]}. Better, "
                + "leave the outlets of a series pair to its own loads.");
        }
    }

    /// <summary>Whether it is only taken for granted that outlets of one supply share a return.</summary>
    private static bool IsAssumed(WiredFeed feed) => feed.Outlets.All(static outlet => outlet.Rating.Isolated.IsAssumed);

    private static string? SharedReturn(WiredFeed feed)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var outlet in feed.Outlets)
        {
            if (!seen.Add(outlet.Rating.Return))
                return outlet.Rating.Return;
        }

        return null;
    }

    /// <summary>How many feeds take from each return.</summary>
    private static Dictionary<string, int> FeedsByReturn(WiredRig rig)
    {
        var uses = new Dictionary<string, int>(StringComparer.Ordinal);
        var counted = new HashSet<string>(StringComparer.Ordinal);
        foreach (var feed in rig.Feeds)
        {
            counted.Clear();
            foreach (var outlet in feed.Outlets)
            {
                if (counted.Add(outlet.Rating.Return))
                    uses[outlet.Rating.Return] = uses.GetValueOrDefault(outlet.Rating.Return) + 1;
            }
        }

        return uses;
    }
}
