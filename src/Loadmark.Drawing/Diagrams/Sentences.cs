using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Diagrams;

/// <summary>Each part of a rig in a sentence, for who does not see the picture.</summary>
internal static class Sentences
{
    public static string OfMains(Rig rig) => rig.Mains is { } mains ? $"Mains, {mains}." : "Mains, voltage not given.";

    public static string OfSupply(DiagramModel view, SupplyRating supply)
    {
        var parts = new List<string> { $"Supply {supply.Supply.Id}" };
        if (supply.Supply.Name is { } name)
            parts.Add(name);
        if (supply.Supply.ToBuy)
            parts.Add(ToBuyMark.Words);
        parts.Add(supply.Supply.Outlets.Count switch { 0 => "no outlets", 1 => "one outlet", var count => $"{count} outlets" });
        if (supply.Mains?.Volts is { } mains)
            parts.Add($"for mains of {mains}");
        foreach (var total in view.TotalsOf(supply))
            parts.Add($"{total.Holder} {(total.IsWhole ? "" : "over ")}{AmountText.Of(total)}");
        return Join(parts, view.WorstOf(supply.Supply.Id));
    }

    public static string OfOutlet(DiagramModel view, WiredOutlet outlet)
    {
        var loading = view.LoadingOf(outlet);
        var parts = new List<string> { $"Outlet {outlet.Name}", VoltsOf(outlet) };
        if (PolarityNote.Of(outlet.Rating.Polarity, outlet.Rating.Form) is { } polarity)
            parts.Add(polarity);
        if (loading.Loads.Count == 0)
        {
            parts.Add($"free, gives {loading.Limit?.ToString() ?? "a current that is not known"}");
        }
        else
        {
            var (assumed, over) = (loading.DrawIsAssumed ? "assumed " : "", loading.RunsOver ? ", over its limit" : "");
            parts.Add($"{assumed}{AmountText.Of(loading.Run, loading.Limit)}{over}");
            if (loading.Start is { } start && start != loading.Run)
                parts.Add($"starts with {FigureDisplay.Said(start, loading.Limit)}{(loading.StartsOver ? ", over its limit" : "")}");
        }

        if (view.ReadingOf(outlet) is { } reading)
            parts.Add($"now {FigureDisplay.Said(reading.Amps, loading.Limit)}{(reading.State is { } state ? $", {state}" : "")}");
        if (loading.Loads.Count > 0)
            parts.Add($"feeds {Phrases.List(loading.Loads)}");
        if (outlet.Rating.Isolated.Value || OutletDrawing.SharesReturn(outlet))
            parts.Add(ReturnOf(outlet));
        return Join(parts, view.WorstOf(outlet.Name));
    }

    public static string OfLoad(DiagramModel view, WiredLoad load)
    {
        var rating = load.Rating;
        var parts = new List<string> { $"Load {load.Id}" };
        if (rating.Load.Name is { } name)
            parts.Add(name);
        if (rating.Load.Kind is { } kind)
            parts.Add(kind.Text);
        parts.Add(
            rating.Voltage.IsKnown
                ? $"needs {rating.Voltage}{(rating.Form.Value == SupplyForm.Alternating ? " a.c." : "")}"
                : "its voltage is not known");
        if (PolarityNote.Of(rating.Polarity, rating.Form) is { } polarity)
            parts.Add(polarity);
        if (rating.Ground.Value == GroundSide.Positive)
            parts.Add("positive ground");
        if (rating.Load.Isolate)
            parts.Add("needs an isolated outlet");
        parts.Add(rating.Running is { } run ? $"draws {run}" : "its draw is not known");
        if (rating.StartIsGiven && rating.Starting is { } start)
            parts.Add($"starts with {start}");
        parts.Add(load.Feeds.Count == 0 ? "not fed" : $"fed by {Phrases.List([.. load.Feeds.Select(static feed => feed.OutletNames)])}");
        if (view.ReadingOf(load) is { } reading)
            parts.Add($"now {FigureDisplay.Said(reading.Volts)}{(reading.State is { } state ? $", {state}" : "")}");
        return Join(parts, view.WorstOf(load.Id));
    }

    public static string OfLead(DiagramModel view, FeedRows rows)
    {
        var feed = rows.Feed;
        var parts = new List<string> { feed.Lead is { } lead ? $"Lead {lead.Id}, {LeadNames.Of(lead.Type)}" : "Straight lead" };
        if (feed.Lead is { ToBuy: true })
            parts.Add(ToBuyMark.Words);
        if (feed.Joined != Joint.None)
            parts.Add($"in {feed.Joined.ToString().ToLowerInvariant()}, {feed.VoltsText}");
        parts.Add($"from {feed.OutletNames} to {Phrases.List(Phrases.Ids(feed.Loads))}");
        if (rows.FreePlugs > 0)
            parts.Add(rows.FreePlugs == 1 ? "one plug free" : $"{rows.FreePlugs} plugs free");
        return Join(parts, feed.Lead is { } listed ? view.WorstOf(listed.Id) : null);
    }

    public static string VoltsOf(WiredOutlet outlet) =>
        $"{outlet.Volts?.ToString() ?? "voltage not known"}{(outlet.Rating.Form.Value == SupplyForm.Alternating ? " a.c." : "")}";

    private static string ReturnOf(WiredOutlet outlet) => outlet.Rating.Isolated.Value
        ? "isolated"
        : outlet.Rating.Outlet.Bank is { } bank
            ? $"shares the return of bank {bank}"
            : $"shares its supply's return{(outlet.Rating.Isolated.IsAssumed ? " (assumed)" : "")}";

    private static string Join(List<string> parts, Severity? worst) =>
        SafeText.Clean($"{string.Join(", ", parts)}.{(worst is { } severity ? $" Worst finding: {SignShapes.WordOf(severity)}." : "")}");
}
