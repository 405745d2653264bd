using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Texts;
using Loadmark.Simulation;
using Loadmark.Simulation.Figures;

namespace Loadmark.Workshop.Asking;

/// <summary>Judges the currents, running and starting, of each outlet in use.</summary>
/// <param name="analysis">The rig, checked and computed as far as its start.</param>
internal sealed class CurrentPoints(RigAnalysis analysis)
{
    private static readonly HashSet<RuleId> OfTotals = [RuleId.BankOverload, RuleId.SupplyOverload];
    private static readonly HashSet<RuleId> OfStart = [RuleId.StartOverload, RuleId.DoesNotStart, RuleId.Sags];

    /// <summary>What stays unused of the outlets in use; null where a draw or a limit is not known.</summary>
    public Amps? Left
    {
        get
        {
            var used = Used.ToList();
            return used.Count > 0 && used.TrueForAll(static outlet => outlet is { Limit: not null, Run: not null })
                ? new Amps(Math.Max(0, used.Sum(static outlet => outlet.Limit!.Value.Value - outlet.Run!.Value.Value)))
                : null;
        }
    }

    private IEnumerable<OutletLoading> Used => analysis.Check.Outlets.Items.Where(static outlet => outlet.Loads.Count > 0);

    /// <summary>The points, one of each sort for each outlet in use.</summary>
    public IEnumerable<JudgedPoint> Judge() => Used.Select(Running).Concat(Totals()).Concat(Used.Select(Starting));

    private static JudgedPoint Point(PlugInAspect aspect, PointState state, string working) =>
        new(aspect, state, SentenceCase.Capital(working));

    /// <summary>What an outlet carries in words: "300 mA of 2 A", "12 mA + 300 mA = 312 mA of 2 A".</summary>
    /// <param name="outlet">The outlet, with draws and limit known.</param>
    private string Of(OutletLoading outlet)
    {
        var parts = outlet.Loads.Items.Select(RunOf).ToList();
        var sum = parts.Count > 1 ? $"{string.Join(" + ", parts.Select(FigureDisplay.Printed))} = " : "";
        return $"{sum}{FigureDisplay.Said(outlet.Run)} of {FigureDisplay.Printed(outlet.Limit)}";
    }

    private Amps? RunOf(string load) => analysis.Wired.Loads.Items.First(one => one.Id == load).Rating.Running?.Value;

    private JudgedPoint Running(OutletLoading outlet)
    {
        const PlugInAspect aspect = PlugInAspect.Amps;
        var (name, loads) = (ThingNames.Of(analysis.Wired.Rig, outlet.Outlet), ThingNames.List(outlet.Loads.Items));
        var verb = Phrases.Verb(outlet.Loads.Count, "draws", "draw");
        if (outlet.Run is not { } run)
        {
            var unknown = ThingNames.List(outlet.Loads.Items.Where(load => RunOf(load) is null));
            var most = outlet.Limit is { } limited ? $"at most {limited}" : "no one knows how much";
            return Point(aspect, PointState.Unsure, $"nothing tells what {unknown} draws; {name} gives {most}.") with
            {
                If = outlet.Limit is { } all
                    ? $"no more than {all} is drawn from {name} in all: read the label of {unknown}, or measure"
                    : $"{name} gives what {unknown} draws",
            };
        }

        if (outlet.Limit is not { } limit)
            return Point(aspect, PointState.Unsure, $"{loads} {verb} {run}; nothing tells how much {name} can give.") with
            {
                If = $"{name} gives {run} or more: read its label",
            };
        if (outlet.RunsOver)
            return Point(aspect, PointState.Bad, $"{loads} {verb} {Of(outlet)}: more than {name} can give.");
        var left = limit - run;
        if (outlet.DrawIsAssumed)
            return Point(aspect, PointState.Unsure, $"{Of(outlet)}, with a draw that is a guess from the kind of thing.") with
            {
                If = $"no more than {limit} is drawn from {name} in all",
            };
        return analysis.Check.Findings.Items
            .Any(finding => finding.Rule == RuleId.ThinHeadroom && finding.Subjects.Items.Contains(outlet.Outlet.ToString()))
            ? Point(aspect, PointState.Unsure, $"{Of(outlet)}: it is enough, with little to spare.") with
            {
                If = left.Value > 0
                    ? $"nothing more is plugged into {name}: {FigureDisplay.Spare(left)} is all that it has left"
                    : $"nothing more is plugged into {name}: it has nothing left",
            }
            : Point(aspect, PointState.Good, $"{Of(outlet)}: {FigureDisplay.Spare(left)} to spare.");
    }

    private IEnumerable<JudgedPoint> Totals() => analysis.Check.Findings.Items.Where(static finding => OfTotals.Contains(finding.Rule))
        .Select(static finding => Point(
            PlugInAspect.Amps,
            finding.Severity >= Severity.Fails ? PointState.Bad : PointState.Unsure,
            $"{finding.Message} {finding.Working}."));

    private JudgedPoint Starting(OutletLoading outlet)
    {
        const PlugInAspect aspect = PlugInAspect.Start;
        var name = outlet.Outlet.ToString();
        var bad = analysis.Check.Findings.Items.FirstOrDefault(finding => OfStart.Contains(finding.Rule)
            && (finding.Subjects.Items.Contains(name) || finding.Subjects.Items.Any(outlet.Loads.Items.Contains)));
        if (bad is not null)
            return Point(aspect, bad.Severity >= Severity.Fails ? PointState.Bad : PointState.Unsure, bad.Message) with
            {
                If = bad.Severity >= Severity.Fails ? null : $"this does no harm to the sound: {bad.Message.TrimEnd('.')}",
            };
        if (outlet.Run is null || outlet.Limit is null)
            return Point(aspect, PointState.Unsure, "whether it starts cannot be told without the currents.");
        var given = analysis.Wired.Loads.Items.Where(load => outlet.Loads.Items.Contains(load.Id)).ToList();
        if (given.Exists(static load => load.Rating.StartIsGiven))
            return Point(
                aspect, PointState.Good, $"{FigureDisplay.Said(outlet.Start)} of {FigureDisplay.Printed(outlet.Limit)} while starting.");
        var started = analysis.Started?.Loads.Items.Where(load => outlet.Loads.Items.Contains(load.Load)).ToList();
        return started is { Count: > 0 } && started.TrueForAll(static load => load.RunsAfter is not null && load.State == LoadState.Runs)
            ? Point(aspect, PointState.Good, "computed, it comes up; nothing on the labels says that starting takes more than running.")
            : Point(
                aspect,
                PointState.Good,
                $"nothing on the labels says that starting takes more than running: {FigureDisplay.Said(outlet.Run)}.");
    }
}
