using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks.Rules;

/// <summary>Outlets are joined in series although their returns are joined.</summary>
internal sealed class SeriesShort : Rule
{
    /// <inheritdoc/>
    public override string Name => "series-short";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source => "Kirchhoff's voltage law: the series lead joins one outlet's output to the other's return";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var feed in rig.Feeds)
        {
            if (feed.Joined != Joint.Series)
                continue;

            var shared = SharedReturn(feed);
            if (shared is not null)
            {
                report.Add(
                    this,
                    Words.Subjects(feed),
                    $"{feed.OutletNames} are joined in series but share the return of {shared}: one of them is shorted.",
                    "output of one outlet joined to its own return",
                    "Join only outlets that each have a return of their own (isolated).");
            }
            else if (BusyReturns(feed) > 1)
            {
                report.Add(
                    this,
                    Words.Subjects(feed),
                    $"{feed.OutletNames} are joined in series, and the returns of more than one of them carry other loads: the audio leads join those returns and short an outlet.",
                    "two returns at different voltages joined over audio grounds",
                    "Leave the outlets of a series pair to its own loads.");
            }
        }
    }

    private static string? SharedReturn(WiredFeed feed)
    {
        for (var one = 0; one < feed.Outlets.Length; one++)
        {
            for (var other = one + 1; other < feed.Outlets.Length; other++)
            {
                if (feed.Outlets[one].Rating.Return == feed.Outlets[other].Rating.Return)
                    return feed.Outlets[one].Rating.Return;
            }
        }

        return null;
    }

    private static int BusyReturns(WiredFeed feed)
    {
        var busy = 0;
        foreach (var outlet in feed.Outlets)
        {
            foreach (var load in outlet.ReturnGroup.Loads)
            {
                if (load.Feeds.Any(other => other != feed && other.Outlets.Any(its => its.Rating.Return == outlet.Rating.Return)))
                {
                    busy++;
                    break;
                }
            }
        }

        return busy;
    }
}
