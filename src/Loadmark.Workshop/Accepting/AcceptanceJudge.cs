using Loadmark.Core.Acceptance;
using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Readings;

namespace Loadmark.Workshop.Accepting;

/// <summary>
/// Judges what was measured on a finished rig. A reading passes where it lies within what is expected by more than the meter may be off,
/// and fails where it lies outside by more than that (<see cref="GuardBand"/>); what is not known passes nothing.
/// </summary>
public static class AcceptanceJudge
{
    /// <summary>
    /// A reading so far outside of what is expected, as a share of it, fails whatever the meter is: none that works is off by so much
    /// (common practice, no source).
    /// </summary>
    private const decimal GrossShare = 0.1m;

    /// <summary>Judges a session.</summary>
    /// <param name="plan">What was to be measured.</param>
    /// <param name="session">What was measured; plugs that the rig does not have are passed over.</param>
    public static AcceptanceResult Judge(AcceptancePlan plan, BenchSession session)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(session);
        var open = plan.Points.Items.Select(point => Volts(plan, session, point, BenchMeasure.Open)).ToList();
        var measures = open
            .Concat(plan.Points.Items.Select(point => Volts(plan, session, point, BenchMeasure.Loaded)))
            .Concat(plan.Points.Items.Select(point => Draw(session, point))).ToList();
        var because = AcceptanceReasons.Of(plan, session, measures);
        return new AcceptanceResult
        {
            Plan = plan,
            Session = session,
            Measures = [.. measures],
            Verdict = measures.Exists(static one => one.Judged == Conformity.Fail) ? AcceptanceVerdict.Refused
                : because.Count > 0 ? AcceptanceVerdict.Open : AcceptanceVerdict.Accepted,
            Because = [.. because],
            Next = measures.Find(static one => one is { IsNeeded: true, Judged: null }),
            MayBePluggedIn = plan.Check.Verdict >= Severity.Unsure ? []
                : [.. open.Where(static one => one.Judged == Conformity.Pass).Select(static one => one.Point.Plug.Load.Id)],
        };
    }

    private static JudgedMeasure Volts(AcceptancePlan plan, BenchSession session, AcceptancePoint point, BenchMeasure measure)
    {
        var reading = session.Of(point.Name);
        var expected = measure == BenchMeasure.Open ? point.Open : point.Loaded;
        var judged = new JudgedMeasure { Point = point, Measure = measure, ExpectedVolts = expected };
        if ((measure == BenchMeasure.Open ? reading.Open : reading.Loaded) is not { } shown)
            return judged;
        var size = shown with { Value = new Volts(Math.Abs(shown.Value.Value)) };
        var (conformity, chance) = Judge(expected, size, session.VoltsAccuracy);
        var polarity = point.Alternates == true ? null : SignOf(shown);
        judged = judged with { ReadVolts = shown.Value, ReadPolarity = polarity, Probability = chance };

        // Nothing at all has no way round, and has failed already.
        if (size.Value >= NothingOf(expected))
            conformity = Worse(conformity, OfPolarity(point, polarity ?? (measure == BenchMeasure.Loaded ? SignOf(reading.Open) : null)));
        return ReadingMeaning.Tell(plan, session, judged with { Judged = conformity });
    }

    private static JudgedMeasure Draw(BenchSession session, AcceptancePoint point)
    {
        var judged = new JudgedMeasure { Point = point, Measure = BenchMeasure.Draw, ExpectedAmps = point.Draw };
        if (session.Of(point.Name).Draw is not { } shown)
            return judged;

        // What is printed is the most that a load draws: less is no fault.
        QuantityRange<Ampere>? most = point.Draw is { } draw ? new QuantityRange<Ampere>(Quantity<Ampere>.Zero, draw.High) : null;
        var (conformity, chance) = Judge(most, shown, session.AmpsAccuracy, hasLow: false);
        return DrawMeaning.Tell(session, judged with { ReadAmps = shown.Value, Judged = conformity, Probability = chance });
    }

    /// <summary>Under this a voltage is none: a tenth of what is expected at the least.</summary>
    internal static Volts NothingOf(QuantityRange<Volt>? expected) => (expected?.Low ?? new Volts(1)) * 0.1m;

    private static (Conformity Judged, double? Probability) Judge<TUnit>(
        QuantityRange<TUnit>? expected, DisplayedValue<TUnit> shown, PrintedAccuracy<TUnit>? accuracy, bool hasLow = true)
        where TUnit : struct, IUnit
    {
        if (expected is not { } range)
            return (Conformity.NotSure, null);
        Quantity<TUnit>? low = hasLow ? range.Low : null;
        var guard = new GuardBand();
        var expanded = guard.Expanded<TUnit>(accuracy?.StandardUncertainty(shown.Value, shown.Step));
        var judgement = guard.Judge(low, range.High, shown.Value, expanded);
        var isGross = (low is { } least && shown.Value < least * (1 - GrossShare)) || shown.Value > range.High * (1 + GrossShare);
        return (expanded is null && isGross ? Conformity.Fail : judgement.Judged, judgement.Probability);
    }

    private static Conformity OfPolarity(AcceptancePoint point, Polarity? read) => point switch
    {
        { Alternates: true } => Conformity.Pass,
        { Alternates: null } or { Polarity: null } => Conformity.NotSure,
        _ => read is null ? Conformity.NotSure : read == point.Polarity ? Conformity.Pass : Conformity.Fail,
    };

    /// <summary>
    /// The polarity that a reading's sign tells; null where it has none. A sign that was told open holds for the loaded plug.
    /// </summary>
    private static Polarity? SignOf(DisplayedValue<Volt>? shown) => shown switch
    {
        { IsSigned: true, Value.Value: > 0 } => Polarity.CentrePositive,
        { IsSigned: true, Value.Value: < 0 } => Polarity.CentreNegative,
        _ => null,
    };

    private static Conformity Worse(Conformity one, Conformity other) => (Conformity)Math.Max((int)one, (int)other);
}
