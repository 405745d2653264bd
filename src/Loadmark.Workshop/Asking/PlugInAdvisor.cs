using Loadmark.Core.Checks;
using Loadmark.Core.Texts;
using Loadmark.Simulation;

namespace Loadmark.Workshop.Asking;

/// <summary>
/// Answers "may I plug this in?". The rules decide; points, sentences and what is often asked next are made of what they judged, and a yes
/// is said only where no figure that could mean harm is taken for granted.
/// </summary>
public static class PlugInAdvisor
{
    /// <summary>Which aspect a rule is told by; what no aspect tells is told in the rule's own words.</summary>
    private static readonly Dictionary<RuleId, PlugInAspect> Told = new()
    {
        [RuleId.OverVoltage] = PlugInAspect.Volts,
        [RuleId.UnderVoltage] = PlugInAspect.Volts,
        [RuleId.VoltageHigh] = PlugInAspect.Volts,
        [RuleId.VoltageLow] = PlugInAspect.Volts,
        [RuleId.Unregulated] = PlugInAspect.Volts,
        [RuleId.AcIntoDc] = PlugInAspect.Form,
        [RuleId.DcIntoAc] = PlugInAspect.Form,
        [RuleId.ReversedPolarity] = PlugInAspect.Polarity,
        [RuleId.PlugMismatch] = PlugInAspect.Plug,
        [RuleId.PlugLoose] = PlugInAspect.Plug,
        [RuleId.OutletOverload] = PlugInAspect.Amps,
        [RuleId.BankOverload] = PlugInAspect.Amps,
        [RuleId.SupplyOverload] = PlugInAspect.Amps,
        [RuleId.ThinHeadroom] = PlugInAspect.Amps,
        [RuleId.StartOverload] = PlugInAspect.Start,
        [RuleId.DoesNotStart] = PlugInAspect.Start,
        [RuleId.Sags] = PlugInAspect.Start,
        [RuleId.GroundShort] = PlugInAspect.Sharing,
        [RuleId.AcShared] = PlugInAspect.Sharing,
        [RuleId.SharedReturnDigital] = PlugInAspect.Sharing,
        [RuleId.ReturnNotItsOwn] = PlugInAspect.Sharing,
    };

    /// <summary>Answers a question.</summary>
    /// <param name="asked">What is asked about, as it was read.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static PlugInAnswer Answer(AskedRig asked, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(asked);
        if (asked.Rig.Supplies.Count == 0)
            return ShopAdvice.For(asked.Rig, asked.IsChain, cancellation);
        var wiring = PlugInWiring.Of(asked.Rig, asked.IsChain, cancellation);
        var analysis = RigAnalysis.Of(wiring.Rig, AnalysisDepth.StartUp, cancellation);
        return Of(wiring, analysis);
    }

    private static PlugInAnswer Of(PlugInWiring wiring, RigAnalysis analysis)
    {
        var currents = new CurrentPoints(analysis);
        List<JudgedPoint> points =
        [
            .. FeedPoints.Of(analysis.Wired).SelectMany(static alike => alike.Judge()),
            .. currents.Judge(),
            .. new SharingPoint(analysis.Wired).Judge(),
        ];
        var untold = Untold(analysis.Check, points);
        List<string> bad =
        [
            .. wiring.Reasons.Items,
            .. points.Where(static point => point.State == PointState.Bad).Select(static point => point.Working),
            .. untold.Where(static finding => finding.Severity >= Severity.Fails).Select(static finding => finding.Message),
        ];
        if (wiring.Unfed.Count > 0 && wiring.Reasons.Count == 0)
            bad.Insert(0, $"Nothing here can feed {ThingNames.List(wiring.Unfed.Items)}.");
        List<string> asks =
        [
            .. points.Select(static point => point.Ask).OfType<string>().Distinct(StringComparer.Ordinal),
            .. untold.Where(static finding => finding.Severity == Severity.Unsure).Select(static finding => finding.Message),
        ];
        List<string> ifs =
        [
            .. points.Select(static point => point.If).OfType<string>().Distinct(StringComparer.Ordinal),
            .. untold.Where(static finding => finding.Severity is Severity.Noise or Severity.Margin)
                .Select(static finding => $"this does not matter: {finding.Message.TrimEnd('.')}"),
        ];
        var verdict = bad.Count > 0 ? PlugInVerdict.No
            : asks.Count > 0 ? PlugInVerdict.FindOut
            : ifs.Count > 0 ? PlugInVerdict.YesIf
            : PlugInVerdict.Yes;
        var summary = new PlugInSummary(analysis, currents.Left);
        return new PlugInAnswer
        {
            Verdict = verdict,
            Sentence = verdict switch
            {
                PlugInVerdict.No => $"No: {Lowered(bad[0])}",
                PlugInVerdict.FindOut => FindOut(asks),
                PlugInVerdict.YesIf => ifs.Count == 1 ? $"Yes, if {ifs[0]}." : $"Yes, if {Number(ifs.Count)} things hold.",
                _ => $"Yes, it is safe to plug in. {summary.WhatFits}",
            },
            Because = [.. verdict switch
            {
                PlugInVerdict.No => bad,
                PlugInVerdict.FindOut => points.Where(static point => point.Ask is not null).Select(static point => point.Working),
                PlugInVerdict.YesIf => points.Where(static point => point.If is not null).Select(static point => point.Working),
                _ => [summary.WhatFits],
            }],
            Ifs = [.. (verdict switch
            {
                PlugInVerdict.FindOut => asks,
                PlugInVerdict.YesIf => ifs,
                _ => [],
            }).Distinct(StringComparer.Ordinal)],
            Points = [.. Joined(points)],
            Left = currents.Left,
            Fits = verdict == PlugInVerdict.No ? [] : [.. summary.Fits()],
            Next = [.. summary.Next(verdict)],
            Rig = wiring.Rig,
            Check = analysis.Check,
        };
    }

    /// <summary>What is to be found out, in one sentence.</summary>
    /// <param name="asks">The questions, at least one.</param>
    public static string FindOut(IReadOnlyList<string> asks) =>
        asks.Count == 1 ? $"Find out first: {Lowered(asks[0])}" : $"Find out {Number(asks.Count)} things first.";

    private static string Number(int count) => count switch
    {
        2 => "two",
        3 => "three",
        4 => "four",
        5 => "five",
        _ => $"{count}",
    };

    /// <summary>The findings that no point tells of: of a rule without an aspect, or worse than the points of its aspect.</summary>
    private static List<Finding> Untold(CheckResult check, List<JudgedPoint> points) =>
    [
        .. check.Findings.Items.Where(static finding => finding.Severity > Severity.Note && finding.Rule != RuleId.Unfed)
            .Where(finding => finding.Rule != RuleId.FigureAssumed && !(Told.TryGetValue(finding.Rule, out var aspect)
                && points.Exists(point => point.Aspect == aspect && Weighs(point, finding.Severity)))),
    ];

    /// <summary>Whether a point weighs as much in the answer as a finding.</summary>
    private static bool Weighs(JudgedPoint point, Severity severity) => severity switch
    {
        >= Severity.Fails => point.State == PointState.Bad,
        Severity.Unsure => point.Ask is not null,
        _ => point.State != PointState.Good,
    };

    /// <summary>One point for each aspect, the worst state of its parts and all they say, what is worst first.</summary>
    private static IEnumerable<PlugInPoint> Joined(List<JudgedPoint> points) => points.GroupBy(static point => point.Aspect)
        .OrderBy(static aspect => aspect.Key)
        .Select(static aspect => new PlugInPoint(
            aspect.Key,
            aspect.Max(static point => point.State),
            string.Join(
                ' ',
                aspect.OrderByDescending(static point => point.State)
                    .Select(static point => point.Working)
                    .Distinct(StringComparer.Ordinal))));

    /// <summary>A sentence that goes on after a colon; names that begin with a capital stay.</summary>
    private static string Lowered(string sentence) =>
        sentence.Length > 1
        && char.IsUpper(sentence[0])
        && char.IsLower(sentence[1])
        && !sentence.StartsWith("I ", StringComparison.Ordinal)
            ? SentenceCase.Small(sentence)
            : sentence;
}
