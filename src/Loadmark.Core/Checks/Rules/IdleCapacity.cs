using Loadmark.Core.Display;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks.Rules;

/// <summary>
/// Loads sit on a large outlet although a smaller free one would do as well: exchanging what the two carry frees the
/// larger. Only this exchange is looked at; a rearrangement of the whole rig is the plan's work.
/// </summary>
internal sealed class IdleCapacity : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.IdleCapacity;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Note;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    protected override void Judge(NameplateCase subject, Report report)
    {
        var rig = subject.Rig;
        // Only outlets of the same supply are exchanged, and a supply's outlets stand together in the rig.
        List<WiredOutlet>? free = null;
        List<WiredOutlet>? used = null;
        for (var place = 0; place < rig.Outlets.Count; place++)
        {
            var outlet = rig.Outlets[place];
            if (outlet.Feeds.Count == 0)
                (free ??= []).Add(outlet);
            else if (outlet.Feeds is [{ Joined: Joint.None, Feed.Pinned: false }]
                && outlet is { Limit: not null, Volts: not null, DrawIsKnown: true })
                (used ??= []).Add(outlet);

            if (place + 1 < rig.Outlets.Count && rig.Outlets[place + 1].Supply == outlet.Supply)
                continue;
            if (free is not null && used is not null)
                Exchange(used, free, rig, report);
            free?.Clear();
            used?.Clear();
        }
    }

    private void Exchange(List<WiredOutlet> used, List<WiredOutlet> free, WiredRig rig, Report report)
    {
        // The largest outlets first: each free outlet can take one feed only, and it should free the most. Equal outlets come
        // in the order of the wiring, so that exchanging two of them changes nothing but their names.
        foreach (var outlet in used.OrderByDescending(outlet => outlet.Limit!.Value.Value).ThenBy(outlet => outlet.Feeds[0].Index))
        {
            var best = Smallest(outlet, free, rig);
            if (best is not { } exchange)
                continue;

            free.Remove(exchange.Outlet);
            var limit = outlet.Limit!.Value.Value;
            report.Add(
                this,
                [outlet.Name, exchange.Outlet.Name, .. Phrases.Ids(outlet.Feeds[0].Loads)],
                $"{Phrases.List(Phrases.Ids(outlet.Feeds[0].Loads))} {Phrases.Verb(outlet.Feeds[0].Loads.Length, "draws", "draw")} "
                + $"{outlet.Run} from {outlet.Name}, which can give {limit}; {exchange.Outlet.Name} is free and enough.",
                $"{outlet.Run} ≤ {FigureDisplay.Percent(1 - rig.Rig.HeadroomInForce)} × {exchange.Limit} = "
                + $"{exchange.Limit * (1 - rig.Rig.HeadroomInForce)}; {exchange.Limit} < {limit}",
                $"Move to {exchange.Outlet.Name}, and {outlet.Name} is free for something larger.");
        }
    }

    private static (WiredOutlet Outlet, Amps Limit)? Smallest(WiredOutlet from, List<WiredOutlet> free, WiredRig rig)
    {
        (WiredOutlet Outlet, Amps Limit)? best = null;
        var usable = 1 - rig.Rig.HeadroomInForce;
        foreach (var candidate in free)
        {
            if (!IsAlike(from, candidate) || candidate.Rating.ModeAt(from.Volts!.Value)?.LimitAt(from.Volts.Value)?.Value is not { } limit)
                continue;

            // The exchange must not cost anything: neither headroom nor start, neither quiet nor a total.
            var frees = limit < from.Limit!.Value.Value && (best is not { } so || limit < so.Limit);
            if (frees && from.Run <= limit * usable && from.Start <= limit && KeepsQuiet(from, candidate))
                best = (candidate, limit);
        }

        return best;
    }

    private static bool IsAlike(WiredOutlet from, WiredOutlet candidate) =>
        KeepsBank(from.Rating.Outlet.Bank, candidate.Rating.Outlet.Bank, candidate.Rating.Supply.Banks)
        && candidate.Rating.NoLoad == from.Rating.NoLoad
        && candidate.Rating.Form.Value == from.Rating.Form.Value
        && candidate.Rating.Polarity == from.Rating.Polarity
        && candidate.Rating.Plug == from.Rating.Plug;

    /// <summary>Another bank's limit would have to be judged anew; outlets in no bank, or in one without a limit, add nothing.</summary>
    private static bool KeepsBank(string? from, string? candidate, ValueList<Bank> banks) =>
        candidate is null || candidate == from || !banks.Items.Any(bank => bank.Name == candidate);

    private static bool KeepsQuiet(WiredOutlet from, WiredOutlet candidate) =>
        candidate.Rating.Isolated.Value
        || candidate.Rating.Return == from.Rating.Return
        || candidate.ReturnGroup.Loads.Count == 0;
}
