namespace Loadmark.Core.Checks.Rules;

/// <summary>A load that needs an isolated outlet shares its return with another.</summary>
internal sealed class ReturnNotItsOwn : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.ReturnNotItsOwn;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Noise;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    protected override void Judge(NameplateCase subject, Report report)
    {
        foreach (var (group, _, occupancy) in subject.Returns)
        {
            if (!occupancy.SharesIsolating)
                continue;

            var own = new List<string>();
            var others = new List<string>();
            foreach (var load in group.Loads)
                (load.Rating.Load.Isolate ? own : others).Add(load.Id);
            report.Add(
                this,
                Phrases.Subjects(group, [.. own, .. others]),
                $"{Phrases.List(own)} "
                + $"{Phrases.Verb(own.Count, "needs an isolated outlet and shares", "need isolated outlets and share")} the return of "
                + $"{Phrases.List(group.Names)}"
                + (others.Count > 0 ? $" with {Phrases.List(others)}." : "."),
                $"{group.Loads.Count} loads on one return",
                $"Give {Phrases.List(own)} an isolated outlet{Phrases.Verb(own.Count, "", " each")}.",
                [.. own]);
        }
    }
}
