using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load is on no feed.</summary>
internal sealed class Unfed : Rule
{
    /// <inheritdoc/>
    public override string Name => "unfed";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        List<string>? dark = null;
        foreach (var load in rig.Loads)
        {
            if (load.Feeds.Count == 0)
                (dark ??= []).Add(load.Id);
        }

        if (dark is null)
            return;

        if (rig.Rig.Wired is null)
            report.Add(this, [.. dark], $"Nothing is wired yet: {Words.List(dark)} {Words.Verb(dark.Count, "has", "have")} no outlet.", "0 feeds", remedy: "Write under 'wired' what feeds what.");
        else
            report.Add(this, [.. dark], $"{Words.List(dark)} {Words.Is(dark.Count)} fed by nothing.", "0 feeds", remedy: $"Give {Words.Verb(dark.Count, "it", "each")} an outlet, or take it off the rig.");
    }
}
