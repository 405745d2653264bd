using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

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
        JudgeDraws(rig, report);
        JudgeVoltages(rig, report);
        JudgeSettings(rig, report);
        JudgeConnectors(rig, report);
        JudgeReturns(rig, report);
    }

    private void JudgeDraws(WiredRig rig, Report report)
    {
        var byClass = new Dictionary<LoadClass, List<WiredLoad>>();
        foreach (var load in rig.Loads)
        {
            if (load.Feeds.Count == 0)
                continue;

            if (load.Rating.Running is null)
                AddUnknownDraw(load, report);
            else if (load.Rating.StandIn is not null && load.Rating.Load.Kind is { } kind)
                (byClass.TryGetValue(kind.Class, out var loads) ? loads : byClass[kind.Class] = []).Add(load);
        }

        foreach (var loads in byClass.Values)
        {
            var ids = Words.Ids(loads);
            var figures = loads[0].Rating.StandIn!;
            report.Add(
                this,
                [.. ids],
                $"The draw of {Words.List(ids)} is not given: taken as {figures.StandIn}{Words.Verb(ids.Count, "", " each")}.",
                $"{loads[0].Rating.Load.Kind}: {figures}, taken as {figures.StandIn}",
                $"Read the {Words.Verb(ids.Count, "label", "labels")} or measure.");
        }
    }

    private void AddUnknownDraw(WiredLoad load, Report report)
    {
        var outlet = load.Feeds[0].Outlets[0];
        var unclear = load.Rating.Load.Label is { Unread.IsEmpty: false } label ? $" Not understood on its label: “{label.Unread[0].Text}”." : "";
        var left = outlet.Limit is { } limit ? Amps.Max(limit.Value - outlet.Run, Quantity<Ampere>.Zero) : (Amps?)null;
        report.Add(
            this,
            Words.Subjects(load, load.Feeds[0]),
            $"Nothing tells what {load.Id} draws; {outlet.Name} is enough only if that is {(left is { } most ? $"no more than {most}" : "within its limit")}.{unclear}",
            left is { } rest ? $"{outlet.Limit!.Value.Value} − {outlet.Run} known = {rest}" : "",
            $"Read the label of {load.Id}, measure it, or give its kind.");
    }

    private void JudgeVoltages(WiredRig rig, Report report)
    {
        var loads = Words.Ids(rig.Loads.Where(load => load.Feeds.Count > 0 && load.Rating.Voltage.IsAssumed));
        if (loads.Count > 0)
        {
            report.Add(
                this,
                [.. loads],
                $"The voltage of {Words.List(loads)} is not given: taken as {ClassFigures.CommonVoltage}, what most pedals want.",
                $"assumed {ClassFigures.CommonVoltage}",
                $"Read the {Words.Verb(loads.Count, "label", "labels")} before plugging in.");
        }

        var outlets = rig.Outlets.Where(outlet => outlet.Feeds.Count > 0 && outlet.Volts is null).Select(outlet => outlet.Name).ToList();
        if (outlets.Count > 0)
        {
            report.Add(
                this,
                [.. outlets],
                $"The voltage of {Words.List(outlets)} is not given, so nothing about it could be checked.",
                "",
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
            report.Add(this, [.. polarity], $"The polarity of {Words.List(polarity)} is not given: taken as centre negative.", "assumed centre negative", "Look for the drawing of the plug on the label, or measure.");
        if (plug.Count > 0)
            report.Add(this, [.. plug], $"The plug of {Words.List(plug)} is not given: taken as {Plug.Common}.", $"assumed {Plug.Common}", "Try the plug before the gig.");
    }

    private void JudgeReturns(WiredRig rig, Report report)
    {
        // A supply with one outlet shares its return with no other, so whether it is isolated changes nothing.
        var supplies = new List<string>();
        foreach (var outlet in rig.Outlets)
        {
            var supply = outlet.Rating.Supply;
            if (outlet.Feeds.Count > 0 && outlet.Rating.Isolated.IsAssumed && supply.Outlets.Count > 1 && !supplies.Contains(supply.Id))
                supplies.Add(supply.Id);
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
