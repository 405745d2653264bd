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

            foreach (var load in group.Loads)
            {
                if (!load.Rating.Load.Isolate)
                    continue;

                var others = Words.Ids(group.Loads.Where(other => other != load));
                report.Add(
                    this,
                    Words.Subjects(group, [load.Id, .. others]),
                    $"{load.Id} wants a return of its own and shares that of {Words.List(group.Names)} with {Words.List(others)}.",
                    $"{group.Loads.Count} loads on one return",
                    $"Give {load.Id} an isolated outlet.");
            }
        }
    }
}
