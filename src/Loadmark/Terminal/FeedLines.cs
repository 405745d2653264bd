using Loadmark.Core.Display;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning;

namespace Loadmark.Terminal;

/// <summary>A planned wiring in the order a person plugs it in: one line a feed, and what stays free.</summary>
internal static class FeedLines
{
    private const int MostNameCells = 30;

    /// <summary>Writes the lines.</summary>
    /// <param name="sheet">The page.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="indent">Where the lines begin.</param>
    public static void Write(Sheet sheet, PlanResult plan, int indent)
    {
        var feeds = WiredRig.Of(plan.Rig).Feeds;
        var from = Math.Min(MostNameCells, feeds.Select(static feed => feed.OutletNames.Length).DefaultIfEmpty().Max()) + indent + 2;
        foreach (var feed in feeds)
        {
            sheet.PadTo(indent).Put(feed.OutletNames, SheetStyle.Strong).PadTo(from);
            var how = feed.Lead is { } lead ? $" over {ToBuyMark.On(lead.Id, lead.ToBuy)}" : "";
            var setting = feed.Outlets.Any(static outlet => outlet.Rating.Modes.Length > 1) ? $"set to {feed.VoltsText}" : feed.VoltsText;
            var joined = feed.Joined == Joint.None ? "" : $" in {feed.Joined.ToString().ToLowerInvariant()}";
            sheet.Wrap($"{setting}{joined}{how} to {string.Join(", ", feed.Feed.To)}", sheet.Column).EndLine();
        }

        var free = OutletRow.Fold([.. plan.Check.FreeOutlets])
            .Select(static row => $"{row.Name} ({FigureDisplay.Printed(row.Outlet.Limit)})").ToList();
        sheet.PadTo(indent)
            .Wrap(free.Count == 0 ? "No outlet is left over." : $"Free: {string.Join(", ", free)}.", indent, SheetStyle.Faint)
            .EndLine();
        if (plan.Check.ToBuy.Count > 0)
            sheet.PadTo(indent).Wrap($"Yet to be bought: {string.Join(", ", plan.Check.ToBuy)}.", indent, SheetStyle.Orange).EndLine();
        var idle = plan.Check.IdleSupplies.ToList();
        if (idle.Count > 0)
            sheet.PadTo(indent)
                .Wrap(
                    $"Left idle, with nothing at {(idle.Count == 1 ? "its input" : "their inputs")}: {string.Join(", ", idle)}.",
                    indent,
                    SheetStyle.Faint).EndLine();
    }
}
