using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Core.Texts;
using Loadmark.Core.Trials;
using Loadmark.Simulation;

namespace Loadmark.Workshop.Asking;

/// <summary>What fits, what else would, and what is often asked next; what it says of other wirings was tried by the rules.</summary>
/// <param name="analysis">The rig as it was judged.</param>
/// <param name="left">What stays unused; null where that is not known.</param>
internal sealed class PlugInSummary(RigAnalysis analysis, Amps? left)
{
    private const int MostAlike = 40;

    /// <summary>What fits, in a sentence with the currents: "Volts, polarity and current fit; 300 mA of 2 A."</summary>
    public string WhatFits
    {
        get
        {
            var used = analysis.Check.Outlets.Items.Where(static outlet => outlet.Loads.Count > 0).ToList();
            var what = analysis.Wired.Feeds.Items
                .All(static feed => feed.Form is { IsKnown: true, Value: Core.Gear.SupplyForm.Alternating })
                ? "Volts, kind of current and amps"
                : "Volts, polarity and current";
            var sums = used.Select(static outlet => $"{FigureDisplay.Said(outlet.Run)} of {FigureDisplay.Printed(outlet.Limit)}");
            return $"{what} fit; {string.Join(", ", sums)}.";
        }
    }

    private Rig Rig => analysis.Wired.Rig;

    /// <summary>What else could be plugged in.</summary>
    public IEnumerable<string> Fits()
    {
        foreach (var outlet in analysis.Check.FreeOutlets)
            yield return $"{SentenceCase.Capital(ThingNames.Of(Rig, outlet.Outlet))} is free: {FigureDisplay.Printed(outlet.Volts)}, "
                + $"{FigureDisplay.Printed(outlet.Limit)}.";
        foreach (var outlet in analysis.Check.Outlets.Items
            .Where(static outlet => outlet is { Loads.Count: > 0, Limit: not null, Run: not null, Volts: not null }))
        {
            var spare = (outlet.Limit!.Value.Value * (1 - Rig.HeadroomInForce)) - outlet.Run!.Value.Value;
            if (spare > 0)
                yield return $"On one lead with {ThingNames.List(outlet.Loads.Items)}: more for {outlet.Volts} of the same kind and "
                    + $"polarity, up to {FigureDisplay.Spare(new Amps(spare))} in all, if none of it is digital.";
        }
    }

    /// <summary>What is often asked next.</summary>
    /// <param name="verdict">The answer.</param>
    public IEnumerable<FollowUp> Next(PlugInVerdict verdict)
    {
        var loads = analysis.Wired.Loads.Items.Where(static load => load.Feeds.Count > 0).ToList();
        if (left is { Value: > 0 } unused && verdict != PlugInVerdict.No)
        {
            var draw = analysis.Check.Outlets.Items.Sum(static outlet => outlet.Run?.Value ?? 0);
            yield return new FollowUp(
                "Is so much current too much?",
                $"No. What is plugged in takes the {FigureDisplay.Said(new Amps(draw))} that it needs and no more; "
                + $"{FigureDisplay.Spare(unused)} stay unused and do no harm.");
        }

        if (loads is [{ Rating.Voltage.IsKnown: true } only])
            yield return new FollowUp("And with other volts?", OtherVolts(only.Rating));
        if (loads.Count == 1 && verdict is PlugInVerdict.Yes or PlugInVerdict.YesIf && HowMany() is { } many)
            yield return many;
        foreach (var (setting, check) in OtherSettings())
            yield return new FollowUp(
                $"And set to {setting}?",
                check.Findings.Items.FirstOrDefault(
                    static finding => finding.Severity >= Severity.Unsure && finding.Rule != RuleId.Unfed) is { } worst
                    ? $"{(worst.Severity == Severity.Unsure ? "Not without finding out first" : "No")}: {worst.Message}"
                    : "That would do as well, by the labels.");
    }

    private static string OtherVolts(LoadRating load)
    {
        var wanted = load.Voltage.Value;
        var (most, high) = (wanted.High * (1 + VoltageBand.Allowed), wanted.High * (1 + VoltageBand.Fine));
        var (least, low) = (wanted.Low * (1 - VoltageBand.Allowed), wanted.Low * (1 - VoltageBand.Fine));
        return $"It is made for {wanted}. From {low} to {high} all is well; down to {least} and up to {most} is the edge. "
            + "More can damage it; less, and it does not run as it should (common practice).";
    }

    /// <summary>
    /// How many of the same the outlet would carry on one lead, tried one by one; null where the very first is the last that can be told.
    /// </summary>
    private FollowUp? HowMany()
    {
        var feed = Rig.Wired!.Value.Items[0];
        var load = Rig.Loads.Items.First(one => feed.To.Items.Contains(one.Id));
        var most = 1;
        CheckResult? beyond = null;
        for (var count = 2; count <= MostAlike; count++)
        {
            var alike = Enumerable.Range(1, count).Select(number => load with { Id = $"{load.Id} {number}" }).ToList();
            var check = NameplateCheck.Of(Rig with
            {
                Loads = [.. alike],
                Leads = [.. Rig.Leads.Items, PlugInWiring.ChainOf(count)],
                Wired = [feed with { Lead = PlugInWiring.Chain, To = [.. alike.Select(static one => one.Id)] }],
            });
            if (SeverityCounts.Of(check) is var counts && (counts.Harm, counts.Fails, counts.Unsure) != default)
            {
                beyond = check;
                break;
            }

            most = count;
        }

        if (load.Label is null || analysis.Wired.Loads.Items.First(one => one.Id == load.Id).Rating.Running?.Value is not { } each)
            return null;
        var why = beyond?.Findings.Items[0] switch
        {
            null => "",
            { Rule: var rule } when rule == RuleId.OutletOverload =>
                $" {most + 1} would be too many: {most + 1} × {each} = {FigureDisplay.Said(each * (most + 1))} of "
                + $"{FigureDisplay.Printed(analysis.Check.Outlets.Items.First(static outlet => outlet.Loads.Count > 0).Limit)}.",
            var worst => $" With {most + 1}: {worst.Message}",
        };
        return new FollowUp(
            "How many of the same?",
            most == 1
                ? $"Only this one.{why}"
                : $"{(beyond is null ? $"{most} and more" : $"Up to {most}")} on one lead: "
                    + $"{most} × {each} = {FigureDisplay.Said(each * most)}.{why} On one lead they share a return, "
                    + "and digital ones may whine.");
    }

    private IEnumerable<(Volts Setting, CheckResult Check)> OtherSettings()
    {
        if (Rig.Wired is not { Count: 1 } wired || wired[0].From.Count != 1)
            yield break;
        var feed = wired[0];
        foreach (var setting in OutletRating.Of(Rig, feed.From[0]).Settings)
        {
            if (!feed.At.Items.Contains(setting) && feed.At.Count > 0)
                yield return (setting, NameplateCheck.Of(Rig with { Wired = [feed with { At = [setting] }] }));
        }
    }
}
