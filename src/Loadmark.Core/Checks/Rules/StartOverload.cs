using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>What loads draw while they start adds up to more than an outlet, bank or supply can give.</summary>
internal sealed class StartOverload : Rule
{
    /// <inheritdoc/>
    public override string Name => "start-overload";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => "Kirchhoff's current law: all loads of a rig start together when it is switched on";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var budget in budgets.All)
        {
            // A sum that is over while running is reported as such; it says nothing more unless starting is worse.
            if (budget.Limit is not { } limit || budget.Start <= limit || (budget.Run > limit && budget.Start == budget.Run))
                continue;

            var surge = Surge(budget);
            if (surge is not { IsEnough: true })
            {
                report.Add(
                    this,
                    [.. budget.Subjects, .. budget.Parts.Select(part => part.Load.Id).Distinct(StringComparer.Ordinal)],
                    $"{budget.Holder} must give {budget.Text(budget.Start)} while its loads start and can give {budget.Text(limit)}{surge?.Text}.",
                    $"{budget.Sum(starting: true)} > {budget.Text(surge is { } and ? Math.Max(limit, and.Current) : limit)}",
                    budget.Relief(limit, starting: true));
            }
        }

        TellMissingStarts(rig, report);
    }

    private static (bool IsEnough, decimal Current, string Text)? Surge(Budget budget)
    {
        if (budget.Surge is not { } surge)
            return null;
        if (budget.Start > surge)
            return (false, surge, $", {budget.Text(surge)} for a moment");
        if (budget.SurgeDuration is not { } bears)
            return (true, surge, "");

        foreach (var part in budget.Parts)
        {
            if (part.Load.Rating.StartDuration is { } takes && takes > bears)
                return (false, budget.Limit ?? 0, $"; the {budget.Text(surge)} it bears for {bears} are over before {part.Load.Id} has started in {takes}");
        }

        return (true, surge, "");
    }

    private void TellMissingStarts(WiredRig rig, Report report)
    {
        List<string>? missing = null;
        foreach (var load in rig.Loads)
        {
            if (load.Feeds.Count > 0 && load.Rating is { IsDigital: true, StartIsGiven: false })
                (missing ??= []).Add(load.Id);
        }

        if (missing is not null)
        {
            report.CannotTell(
                this,
                [.. missing],
                $"The starting draw of {Words.List(missing)} is not given: taken as the running draw, though digital loads often take far more while they boot.");
        }
    }
}
