using Loadmark.Core.Acceptance;
using Loadmark.Core.Display;
using Loadmark.Core.Gear;

namespace Loadmark.Workshop.Accepting;

/// <summary>What is measured and what comes of it, in words.</summary>
public static class MeasureText
{
    /// <summary>"open", "loaded" or "draw".</summary>
    /// <param name="measure">What is measured.</param>
    public static string Of(BenchMeasure measure) => measure switch
    {
        BenchMeasure.Open => "open",
        BenchMeasure.Loaded => "loaded",
        BenchMeasure.Draw => "draw",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "It has no word."),
    };

    /// <summary>"accepted", "open" or "refused".</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Of(AcceptanceVerdict verdict) => verdict switch
    {
        AcceptanceVerdict.Accepted => "accepted",
        AcceptanceVerdict.Open => "open",
        AcceptanceVerdict.Refused => "refused",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "It has no word."),
    };

    /// <summary>What to do for it, as the heading of a step.</summary>
    /// <param name="measure">What is measured.</param>
    public static string StepOf(BenchMeasure measure) => measure switch
    {
        BenchMeasure.Open => "Nothing plugged in: volts and polarity at every plug",
        BenchMeasure.Loaded => "All loads plugged in and running: volts at every plug",
        BenchMeasure.Draw => "If wanted: what each load draws, the meter in series with it",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "It has no step."),
    };

    /// <summary>
    /// What a meter must show: "− 8.55 to 9.45 V", "up to 45 mA"; ± where the polarity is not known, ~ for alternating current.
    /// </summary>
    /// <param name="measure">What is measured, at which plug.</param>
    public static string Expected(JudgedMeasure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        if (measure.Measure == BenchMeasure.Draw)
            return measure.ExpectedAmps is { } draw ? $"up to {FigureDisplay.Said(draw.High)}" : FigureDisplay.Unknown;
        var sign = measure.Point.Polarity switch
        {
            Polarity.CentreNegative => "− ",
            Polarity.CentrePositive => "+ ",
            _ => measure.Point.Alternates == true ? "~ " : "± ",
        };
        return sign + FigureDisplay.Outwards(measure.ExpectedVolts);
    }

    /// <summary>What the meter did show, with its sign; empty where it was not measured.</summary>
    /// <param name="measure">What was measured.</param>
    public static string Read(JudgedMeasure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        if (measure.Measure == BenchMeasure.Draw)
            return measure.ReadAmps is { } amps ? FigureDisplay.Said(amps) : "";
        return measure.ReadVolts is { } volts
            ? $"{(measure.ReadPolarity == Polarity.CentrePositive ? "+" : "")}{volts}".Replace('-', '−')
            : "";
    }
}
