using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>What loads draw while they start adds up to more than an outlet, bank or supply can give.</summary>
internal sealed class StartOverload : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.StartOverload;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => "Kirchhoff's current law: all loads of a rig start together when it is switched on";

    protected override void Judge(NameplateCase subject, Report report)
    {
        var rig = subject.Rig;
        foreach (var budget in subject.Budgets.All)
        {
            // A sum that is over while running is reported as such; it says nothing more unless starting is worse.
            if (budget.Limit is not { } limit || !Budget.IsOver(budget.Start, limit) || (budget.RunsOver && budget.Start == budget.Run))
                continue;

            if (budget.Surge is { } surge && !Budget.IsOver(budget.Start, surge))
                JudgeDuration(budget, limit, surge, report);
            else
                Add(
                    budget,
                    limit,
                    budget.Surge is { } least ? $", {budget.Text(least)} for a moment" : "",
                    $"{budget.Sum(starting: true)} > {budget.Text(Math.Max(limit, budget.Surge ?? 0))}",
                    report);
        }

        TellMissingStarts(rig, report);
    }

    /// <summary>
    /// A surge that is large enough must also last: when it ends, the loads that have started draw their running current,
    /// and what the others still draw to start has to be within the limit.
    /// </summary>
    private void JudgeDuration(Budget budget, decimal limit, decimal surge, Report report)
    {
        if (budget.SurgeDuration is not { } bears)
        {
            report.Add(
                this,
                Severity.Margin,
                budget.SubjectsAndLoads(),
                $"{budget.Holder} bears {budget.Text(surge)} for a moment; how long is not given, "
                + $"and its {Phrases.Verb(budget.Parts.Count, "load asks", "loads ask")} for {budget.Text(budget.Start)} while starting.",
                $"{budget.Text(limit)} < {budget.Sum(starting: true)} ≤ {budget.Text(surge)}",
                "Look it up, or try it with a meter on the outlet.",
                budget.Subjects);
            return;
        }

        // What is drawn just after the surge: at least, and if all starts of unknown length still go on.
        var (atLeast, atMost) = (0m, 0m);
        (WiredLoad Load, Seconds Takes)? slow = null;
        List<string>? unknown = null;
        foreach (var part in budget.Parts)
        {
            var takes = part.Load.Rating.StartDuration;
            var (least, most) = (part.Run, part.Run);
            if (part.Start > part.Run && takes is null)
            {
                (unknown ??= []).Add(part.Load.Id);
                most = part.Start;
            }
            else if (part.Start > part.Run && takes > bears)
            {
                slow ??= (part.Load, takes.Value);
                (least, most) = (part.Start, part.Start);
            }

            atLeast += least;
            atMost += most;
        }

        if (slow is { } one && Budget.IsOver(atLeast, limit))
        {
            var working = atLeast == budget.Start
                ? $"{budget.Sum(starting: true)} > {budget.Text(limit)}"
                : $"after {bears}: {budget.Text(atLeast)} > {budget.Text(limit)}";
            Add(
                budget,
                limit,
                $"; the {budget.Text(surge)} it bears for {bears} ends before {one.Load.Id} has started, which takes {one.Takes}",
                working,
                report);
        }
        else if (unknown is not null && Budget.IsOver(atMost, limit))
        {
            report.Add(
                this,
                Severity.Margin,
                [.. budget.Subjects, .. unknown],
                $"How long {Phrases.List(unknown)} {Phrases.Verb(unknown.Count, "takes", "take")} to start is not given; "
                + $"{budget.Holder} bears {budget.Text(surge)} for {bears}.",
                $"after {bears}: up to {budget.Text(atMost)} > {budget.Text(limit)}",
                $"Measure how long {Phrases.List(unknown)} {Phrases.Verb(unknown.Count, "takes", "take")}.",
                [.. unknown]);
        }
    }

    private void Add(Budget budget, decimal limit, string surge, string working, Report report) => report.Add(
        this,
        budget.SubjectsAndLoads(),
        $"{budget.Holder} must give {budget.Text(budget.Start)} while its {Phrases.Verb(budget.Parts.Count, "load starts", "loads start")} "
        + $"and can give {budget.Text(limit)}{surge}.",
        working,
        budget.Relief(limit, usable: 1, starting: true),
        budget.Subjects);

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
                $"The starting draw of {Phrases.List(missing)} is not given: taken as the running draw, "
                + "though digital loads often take far more while they boot.");
        }
    }
}
