using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load is on no feed.</summary>
internal sealed class Unfed : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.Unfed;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    protected override void Judge(NameplateCase subject, Report report)
    {
        var rig = subject.Rig;
        // Where nothing is plugged in at all, the verdict says so: open.
        if (rig.Feeds.Count == 0)
            return;

        List<string>? dark = null;
        foreach (var load in rig.Loads)
        {
            if (load.Feeds.Count > 0)
                continue;
            if (!load.IsFedSupply)
                (dark ??= []).Add(load.Id);
        }

        foreach (var supply in rig.DeadSupplies)
            TellDeadSupply(rig, rig.Loads.Items.First(load => load.Id == supply), report);

        foreach (var supply in rig.Supplies.Items.Where(static supply => supply.Supply.Label is { Input: not null, HoldsCharge: true }))
            TellCharge(rig, supply, report);

        if (dark is not null)
            report.Add(
                this,
                [.. dark],
                $"{Phrases.List(dark)} {Phrases.Is(dark.Count)} fed by nothing.",
                "0 feeds",
                remedy: $"Give {Phrases.Verb(dark.Count, "it", "each")} an outlet, or take it off the rig.");
    }

    /// <summary>A supply that holds a charge runs without being fed, as long as that lasts.</summary>
    private void TellCharge(WiredRig rig, SupplyRating supply, Report report)
    {
        var id = supply.Supply.Id;
        if (!rig.IsInUse(id) || rig.Loads.Items.Any(load => load.Id == id && load.Feeds.Count > 0))
            return;
        report.Add(
            this,
            Severity.Margin,
            [id],
            $"Nothing feeds {id}: it runs from its own charge, and nothing here tells how long that lasts.",
            "0 feeds at an input for charging",
            "Charge it before, and measure once how long it lasts.");
    }

    /// <summary>A supply that is fed by another may stay dark while it feeds nothing.</summary>
    private void TellDeadSupply(WiredRig rig, WiredLoad supply, Report report)
    {
        if (!rig.IsInUse(supply.Id))
            return;
        List<string> behind = [.. supply.Feeds.SelectMany(static feed => feed.Outlets)
            .Select(static outlet => outlet.Rating.Supply.Id)
            .Distinct(StringComparer.Ordinal)];
        var why = behind switch
        {
            [] => "by nothing, so its outlets give nothing",
            [var only] when only == supply.Id => "by itself, so nothing feeds it and its outlets give nothing",
            _ => $"by {Phrases.List(behind)}, and nothing that runs from the mains stands behind that: its outlets give nothing",
        };
        report.Add(
            this,
            [supply.Id],
            $"{supply.Id} is fed {why}.",
            behind.Count == 0 ? "0 feeds at its input" : $"{supply.Id} fed by {Phrases.List(behind)}, fed by no supply on the mains",
            $"Feed its input: {supply.Rating.Voltage}, {supply.Rating.Running?.ToString() ?? "a current that is not known"}.");
    }
}
