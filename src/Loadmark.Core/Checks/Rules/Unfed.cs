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
            if (!rig.Rig.IsFedSupply(load.Rating.Load))
                (dark ??= []).Add(load.Id);
            else if (rig.Outlets.Items.Any(outlet => outlet.Rating.Supply.Id == load.Id && outlet.Feeds.Count > 0))
                TellDeadSupply(load, report);
        }

        if (dark is not null)
            report.Add(this, [.. dark], $"{Words.List(dark)} {Words.Is(dark.Count)} fed by nothing.", "0 feeds", remedy: $"Give {Words.Verb(dark.Count, "it", "each")} an outlet, or take it off the rig.");
    }

    /// <summary>A supply that is fed by another may stay dark while it feeds nothing.</summary>
    private void TellDeadSupply(WiredLoad supply, Report report) => report.Add(
        this,
        [supply.Id],
        $"{supply.Id} is fed by nothing, so its outlets give nothing.",
        "0 feeds at its input",
        $"Feed its input: {supply.Rating.Voltage}, {supply.Rating.Running?.ToString() ?? "a current that is not known"}.");
}
