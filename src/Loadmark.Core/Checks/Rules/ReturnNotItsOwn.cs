using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load that wants a return of its own shares one.</summary>
internal sealed class ReturnNotItsOwn : Rule
{
    /// <inheritdoc/>
    public override string Name => "return-not-its-own";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Noise;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var group in rig.Returns)
        {
            if (group.Loads.Count < 2)
                continue;

            var own = new List<string>();
            var others = new List<string>();
            foreach (var load in group.Loads)
                (load.Rating.Load.Isolate ? own : others).Add(load.Id);
            if (own.Count == 0)
                continue;

            report.Add(
                this,
                Words.Subjects(group, [.. own, .. others]),
                $"{Words.List(own)} {Words.Verb(own.Count, "wants a return of its own and shares", "want returns of their own and share")} that of {Words.List(group.Names)}"
                + (others.Count > 0 ? $" with {Words.List(others)}." : "."),
                $"{group.Loads.Count} loads on one return",
                $"Give {Words.List(own)} an isolated outlet{Words.Verb(own.Count, "", " each")}.");
        }
    }
}
