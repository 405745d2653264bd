using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A default or the figure of a class stands in for one that is missing, and the verdict rests on it.</summary>
internal sealed class FigureAssumed : Rule
{
    /// <inheritdoc/>
    public override string Name => "figure-assumed";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Margin;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        JudgeClasses(rig, report);
        JudgeUnclearDraws(rig, report);
        JudgeUnknownDraws(budgets, report);
        JudgeUnknownLimits(budgets, report);
        JudgeBoots(budgets, report);
        JudgeVoltages(rig, report);
        JudgeSettings(rig, report);
        JudgeConnectors(rig, report);
        JudgeReturns(rig, report);
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
            var ids = Words.Ids(loads);
            var figures = loads[0].Rating.StandIn!;
            var kinds = loads.Select(load => load.Rating.Load.Kind!.Text).Distinct(StringComparer.Ordinal).ToList();
            report.Add(
                this,
                [.. ids],
                $"The draw of {Words.List(ids)} is not known: taken as {figures.StandIn}{Words.Verb(ids.Count, "", " each")}.{string.Concat(loads.Take(3).Select(UnclearFigure))}",
                $"{Words.List(kinds)}: {figures}, taken as {figures.StandIn}",
                $"Read the {Words.Verb(ids.Count, "label", "labels")} or measure.");
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
                [load.Id],
                $"The current on the label of {load.Id} can be read as {ways}: taken as {load.Rating.Rated!.Value.Value}, the safe side.",
                $"{ways}, taken as {load.Rating.Rated.Value.Value}",
                $"Type the current of {load.Id} beside its label.");
        }
    }

    /// <summary>An outlet whose limit nothing tells is good only for what it happens to carry.</summary>
    private void JudgeUnknownLimits(Budgets budgets, Report report)
    {
        foreach (var budget in budgets.Outlets)
        {
            if (budget.Limit is null && budget.IsWhole)
            {
                report.Add(
                    this,
                    budget.SubjectsAndLoads(),
                    $"The limit of {budget.Holder} is not known; it is enough only if it gives {budget.Text(budget.Start)} or more.",
                    budget.Sum(starting: true),
                    $"Read the label of {budget.Holder}, or its supply's.");
            }
        }
    }

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

            var boots = budget.Parts.Where(static part => part.Load.Rating is { IsDigital: true, StartIsGiven: false, Rated: { } rated, Running: { } running } && rated.Value > running.Value).ToList();
            var most = budget.Start + boots.Sum(static part => part.Load.Rating.Rated!.Value.Value.Value - part.Load.Rating.Running!.Value.Value.Value);
            if (boots.Count == 0 || !Budget.IsOver(most, limit))
                continue;

            var ids = boots.Select(part => part.Load.Id).ToList();
            report.Add(
                this,
                [.. ids, .. budget.Subjects],
                $"What {Words.List(ids)} {Words.Verb(ids.Count, "takes", "take")} to start is not known: taken as the running draw. If it is the printed one, {budget.Holder} cannot start {Words.Verb(ids.Count, "it", "them")}.",
                $"{budget.Text(most)} > {budget.Text(limit)}",
                $"Measure what {Words.List(ids)} {Words.Verb(ids.Count, "takes", "take")} while booting.");
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
                [.. loads, .. budget.Subjects],
                $"Nothing tells what {Words.List(loads)} {Words.Verb(loads.Count, "draws", "draw")}{Consequence(budget, loads.Count)}.{unclear}",
                budget.Limit is { } limit && !budget.RunsOver ? $"{budget.Text(limit)} − {budget.Text(budget.Run)} known = {budget.Text(limit - budget.Run)}" : budget.Sum(starting: false),
                $"Read the {Words.Verb(loads.Count, "label", "labels")} of {Words.List(loads)}, measure, or give the kind.");
        }
    }

    private static string Consequence(Budget budget, int count)
    {
        if (budget.Limit is not { } limit)
            return $", nor what {budget.Holder} can give";
        if (budget.RunsOver)
            return $"; {budget.Holder} is over its limit without {Words.Verb(count, "it", "them")}";
        return $"; {budget.Holder} is enough only if that is no more than {budget.Text(limit - budget.Run)}{Words.Verb(count, "", " in all")}";
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
        load.Rating.Load.Label is { Unread.IsEmpty: false } label ? $" Not understood on the label of {load.Id}: “{label.Unread[0].Text}”." : "";

    private void JudgeVoltages(WiredRig rig, Report report)
    {
        List<string>? loads = null;
        foreach (var load in rig.Loads)
        {
            if (load.Feeds.Count > 0 && load.Rating.Voltage.IsAssumed)
                (loads ??= []).Add(load.Id);
        }

        if (loads is not null)
        {
            report.Add(
                this,
                [.. loads],
                $"The voltage of {Words.List(loads)} is not known: taken as {ClassFigures.CommonVoltage}, what most pedals want.",
                $"assumed {ClassFigures.CommonVoltage}",
                $"Read the {Words.Verb(loads.Count, "label", "labels")} before plugging in.");
        }

        List<string>? outlets = null;
        foreach (var outlet in rig.Outlets)
        {
            if (outlet.Feeds.Count > 0 && outlet.Volts is null)
                (outlets ??= []).Add(outlet.Name);
        }

        if (outlets is not null)
        {
            report.Add(
                this,
                [.. outlets],
                $"The voltage of {Words.List(outlets)} is not known, so whether it suits could not be checked.",
                "voltage not known",
                "Measure it before plugging in.");
        }
    }

    private void JudgeSettings(WiredRig rig, Report report)
    {
        foreach (var outlet in rig.Outlets)
        {
            if (outlet.Feeds.Count == 0 || outlet.SettingIsStated)
                continue;

            var settings = string.Join(", ", outlet.Rating.Modes.Select(mode => mode.Volts?.ToString() ?? "?"));
            report.Add(
                this,
                [outlet.Name],
                $"{outlet.Name} can be set to {settings}, and the wiring does not say which: taken as {outlet.Volts?.ToString() ?? "?"}.",
                $"settings {settings}",
                $"Look at the switch before plugging in, and write 'at: {outlet.Volts?.ToString() ?? "…"}'.");
        }
    }

    private void JudgeConnectors(WiredRig rig, Report report)
    {
        var polarity = new List<string>();
        var plug = new List<string>();
        foreach (var load in rig.Loads)
        {
            if (load.Feeds.Count == 0)
                continue;
            if (load.Rating.Polarity.IsAssumed && load.Rating.Form.Value == SupplyForm.Direct)
                polarity.Add(load.Id);
            if (load.Rating.Plug.IsAssumed)
                plug.Add(load.Id);
        }

        foreach (var outlet in rig.Outlets)
        {
            if (outlet.Feeds.Count == 0)
                continue;
            if (outlet.Rating.Polarity.IsAssumed && outlet.Rating.Form.Value == SupplyForm.Direct)
                polarity.Add(outlet.Name);
            if (outlet.Rating.Plug.IsAssumed)
                plug.Add(outlet.Name);
        }

        if (polarity.Count > 0)
            report.Add(this, [.. polarity], $"The polarity of {Words.List(polarity)} is not known: taken as centre negative.", "assumed centre negative", "Look for the drawing of the plug on the label, or measure.");
        if (plug.Count > 0)
            report.Add(this, [.. plug], $"The plug of {Words.List(plug)} is not known: taken as {Plug.Common}.", $"assumed {Plug.Common}", "Try the plug before the gig.");
    }

    private void JudgeReturns(WiredRig rig, Report report)
    {
        // A supply with one outlet shares its return with no other, so whether it is isolated changes nothing.
        var supplies = new List<string>();
        Supply? last = null;
        foreach (var outlet in rig.Outlets)
        {
            var supply = outlet.Rating.Supply;
            if (outlet.Feeds.Count > 0 && outlet.Rating.Isolated.IsAssumed && supply.Outlets.Count > 1 && !ReferenceEquals(supply, last))
            {
                // A supply's outlets stand together, so comparing with the last one is enough.
                last = supply;
                supplies.Add(supply.Id);
            }
        }

        if (supplies.Count > 0)
        {
            report.Add(
                this,
                [.. supplies],
                $"Whether the outlets of {Words.List(supplies)} are isolated is not given: taken as sharing one return, the safe side.",
                "assumed not isolated",
                "Measure between two outlets' sleeves with the supply unplugged: no connection means isolated.");
        }
    }
}
