using Loadmark.Core.Acceptance;

namespace Loadmark.Workshop.Accepting;

/// <summary>What is measured, in words.</summary>
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

    /// <summary>What to do for it, as the heading of a step.</summary>
    /// <param name="measure">What is measured.</param>
    public static string StepOf(BenchMeasure measure) => measure switch
    {
        BenchMeasure.Open => "Nothing plugged in: volts and polarity at every plug",
        BenchMeasure.Loaded => "All loads plugged in and running: volts at every plug",
        BenchMeasure.Draw => "If wanted: what each load draws, the meter in series with it",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "It has no step."),
    };
}
