using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>
/// A convention of the trade, or the figure of a class, stands in for what is missing, and the verdict rests on it: a note for the former,
/// a margin where something might not run. What could mean harm is told by the rule on that harm.
/// </summary>
internal sealed class FigureAssumed : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.FigureAssumed;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Note;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    protected override void Judge(NameplateCase subject, Report report)
    {
        var rig = subject.Rig;
        JudgeClasses(rig, report);
        JudgeUnclearDraws(rig, report);
        JudgeUnknownDraws(subject.Budgets, report);
        JudgeUnknownLimits(subject, report);
        JudgeBoots(subject.Budgets, report);
        JudgeSettings(rig, report);
        JudgePlugs(subject, report);
        TellConventions(subject.TakenForGranted, report);
    }

    private void JudgeClasses(WiredRig rig, Report report)
    {
        Dictionary<LoadClass, List<WiredLoad>>? byClass = null;
        foreach (var load in rig.Loads)
        {
            if (load.Feeds.Count > 0 && load.Rating.StandIn is not null && load.Rating.Load.Kind is { } kind)
            {
                byClass ??= [];
                (byClass.TryGetValue(kind.Class, out var loads) ? loads : byClass[kind.Class] = []).Add(load);
            }
        }

        if (byClass is null)
            return;

        foreach (var loads in byClass.Values)
        {
            var ids = Phrases.Ids(loads);
            var figures = loads[0].Rating.StandIn!;
            var kinds = loads.Select(load => load.Rating.Load.Kind!.Text).Distinct(StringComparer.Ordinal).ToList();
            report.Add(
                this,
                Severity.Margin,
                [.. ids],
                $"The draw of {Phrases.List(ids)} is not known: "
                + $"taken as {figures.StandIn}{Phrases.Verb(ids.Count, "", " each")}.{string.Concat(loads.Take(3).Select(UnclearFigure))}",
                $"{Phrases.List(kinds)}: {figures}, taken as {figures.StandIn}",
                $"Read the {Phrases.Verb(ids.Count, "label", "labels")} or measure.");
        }
    }

    private void JudgeUnclearDraws(WiredRig rig, Report report)
    {
        foreach (var load in rig.Loads)
        {
            if (load.Feeds.Count == 0 || !load.Rating.DrawIsUnclear)
                continue;

            var ways = string.Join(" or ", load.Rating.Load.Label!.AmbiguousAmps.Candidates.Select(static amps => amps.ToString()));
            report.Add(
                this,
                Severity.Margin,
                [load.Id],
                $"The current on the label of {load.Id} can be read as {ways}: taken as {load.Rating.Rated!.Value.Value}, the safe side.",
                $"{ways}, taken as {load.Rating.Rated.Value.Value}",
                $"Type the current of {load.Id} beside its label.");
        }
    }

    /// <summary>An outlet whose limit nothing tells is good only for what it happens to carry.</summary>
    private void JudgeUnknownLimits(NameplateCase subject, Report report)
    {
        foreach (var budget in subject.Budgets.Outlets)
        {
            if (budget.Limit is null && budget.IsWhole)
            {
                report.Add(
                    this,
                    Severity.Margin,
                    budget.SubjectsAndLoads(),
                    $"The limit of {budget.Holder} is not known; it is enough only if it gives {budget.Text(budget.Start)} or more."
                    + (PrintsVoltAmps(subject.Rig, budget)
                        ? " Its VA are those of a transformer: of direct current it gives less than they come to."
                        : ""),
                    budget.Sum(starting: true),
                    $"Read the label of {budget.Holder}, or its supply's.",
                    budget.Subjects);
            }
        }
    }

    private static bool PrintsVoltAmps(WiredRig rig, Budget budget) =>
        rig.Outlets.Any(
            outlet => budget.Subjects.Contains(outlet.Name) && outlet.Rating.Modes.Any(static mode => mode.VoltAmps is not null));

    /// <summary>
    /// A digital load that was measured running may take its whole rating while it boots; where its outlet could not give
    /// that, the plan rests on its not doing so.
    /// </summary>
    private void JudgeBoots(Budgets budgets, Report report)
    {
        foreach (var budget in budgets.Outlets)
        {
            if (budget.Limit is not { } limit || Budget.IsOver(budget.Start, limit))
                continue;

            var boots = budget.Parts.Where(
                static part =>
                    part.Load.Rating is { IsDigital: true, StartIsGiven: false, Rated: { } rated, Running: { } running }
                        && rated.Value > running.Value).ToList();
            var most = budget.Start + boots.Sum(
                static part => part.Load.Rating.Rated!.Value.Value.Value - part.Load.Rating.Running!.Value.Value.Value);
            if (boots.Count == 0 || !Budget.IsOver(most, limit))
                continue;

            var ids = boots.Select(part => part.Load.Id).ToList();
            report.Add(
                this,
                Severity.Margin,
                [.. ids, .. budget.Subjects],
                $"What {Phrases.List(ids)} {Phrases.Verb(ids.Count, "takes", "take")} to start is not known: taken as the running draw. "
                + $"If it is the printed one, {budget.Holder} cannot start {Phrases.Verb(ids.Count, "it", "them")}.",
                $"{budget.Text(most)} > {budget.Text(limit)}",
                $"Measure what {Phrases.List(ids)} {Phrases.Verb(ids.Count, "takes", "take")} while booting.");
        }
    }

    private void JudgeUnknownDraws(Budgets budgets, Report report)
    {
        foreach (var budget in budgets.Outlets)
        {
            if (budget.IsWhole)
                continue;

            var loads = budget.UnknownLoads();
            var unclear = string.Concat(budget.Parts.Where(part => !part.IsKnown).Take(3).Select(part => Unclear(part.Load)));
            report.Add(
                this,
                Severity.Margin,
                [.. loads, .. budget.Subjects],
                $"Nothing tells what {Phrases.List(loads)} "
                + $"{Phrases.Verb(loads.Count, "draws", "draw")}{Consequence(budget, loads.Count)}.{unclear}",
                budget.Limit is { } limit && !budget.RunsOver
                    ? $"{budget.Text(limit)} − {budget.Text(budget.Run)} known = {budget.Text(limit - budget.Run)}"
                    : budget.Sum(starting: false),
                $"Read the {Phrases.Verb(loads.Count, "label", "labels")} of {Phrases.List(loads)}, measure, or give the kind.");
        }
    }

    private static string Consequence(Budget budget, int count)
    {
        if (budget.Limit is not { } limit)
            return $", nor what {budget.Holder} can give";
        if (budget.RunsOver)
            return $"; {budget.Holder} is over its limit without {Phrases.Verb(count, "it", "them")}";
        return $"; {budget.Holder} is enough only if that is no more than "
            + $"{budget.Text(limit - budget.Run)}{Phrases.Verb(count, "", " in all")}";
    }

    /// <summary>A piece of the label with a digit in it may be the very figure that is missing.</summary>
    private static string UnclearFigure(WiredLoad load)
    {
        foreach (var piece in load.Rating.Load.Label?.Unread ?? [])
        {
            if (piece.Text.Any(char.IsDigit))
                return $" Not understood on the label of {load.Id}: “{piece.Text}”.";
        }

        return "";
    }

    private static string Unclear(WiredLoad load) =>
        load.Rating.Load.Label is { Unread.IsEmpty: false } label
            ? $" Not understood on the label of {load.Id}: “{label.Unread[0].Text}”."
            : "";

    private void JudgeSettings(WiredRig rig, Report report)
    {
        foreach (var outlet in rig.Outlets)
        {
            // A setting that could harm is told by the rule on over-voltage.
            if (outlet.Feeds.Count == 0 || outlet.SettingIsStated || OverVoltage.HarmfulSetting(outlet) is not null)
                continue;

            var settings = string.Join(", ", outlet.Rating.Modes.Select(mode => FigureDisplay.Printed(mode.Volts)));
            report.Add(
                this,
                Severity.Margin,
                [outlet.Name],
                $"{outlet.Name} can be set to {settings}, and the wiring does not say which: "
                + $"taken as {FigureDisplay.Printed(outlet.Volts)}.",
                $"settings {settings}",
                $"Look at the switch before plugging in, and write 'at: {outlet.Volts?.ToString() ?? "…"}'.");
        }
    }

    /// <summary>Plugs whose size nothing tells and no convention stands for: one that does not fit is found out by trying.</summary>
    private void JudgePlugs(NameplateCase subject, Report report)
    {
        var unknown = new List<string>();
        foreach (var (feed, point, fits) in subject.Feeds)
        {
            for (var place = 0; place < feed.Loads.Length; place++)
            {
                if (fits[place].PlugIsKnown)
                    continue;
                if (!feed.Loads[place].Rating.Plug.IsKnown)
                    unknown.Add(feed.Loads[place].Id);
                if (!point.Plug.IsKnown)
                    unknown.AddRange(feed.Outlets.Select(static outlet => outlet.Name));
            }
        }

        if (unknown.Count > 0)
        {
            List<string> names = [.. unknown.Distinct(StringComparer.Ordinal)];
            report.Add(
                this,
                Severity.Margin,
                [.. names],
                $"The plug of {Phrases.List(names)} is not known, and {Plug.Common} is usual only for ordinary pedals of 9 V: "
                + "it may not fit.",
                "plug not known",
                "See that the plug goes in and holds, before the day it is needed.");
        }
    }

    /// <summary>All that was taken from practice, in one finding.</summary>
    private void TellConventions(TakenForGranted taken, Report report)
    {
        if (taken.Clauses.Count == 0)
            return;

        report.Add(
            this,
            [.. taken.Subjects],
            $"Taken from practice, look once: {string.Join("; ", taken.Clauses)}.",
            string.Join(", ", taken.Conventions.Select(static convention => $"assumed {convention}")),
            "Look at the labels and the drawings of the plugs once, and type what they say.");
    }
}
