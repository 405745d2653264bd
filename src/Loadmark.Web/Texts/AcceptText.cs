using Loadmark.Core.Acceptance;
using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Workshop.Accepting;

namespace Loadmark.Web.Texts;

/// <summary>Readings as they stand on a page.</summary>
internal static class AcceptText
{
    /// <summary>What a meter must show: "− 8.55 to 9.45 V", "up to 45 mA".</summary>
    public static string Expected(JudgedMeasure measure)
    {
        if (measure.Measure == BenchMeasure.Draw)
            return measure.ExpectedAmps is { } draw ? $"≤ {FigureDisplay.Said(draw.High)}" : FigureDisplay.Unknown;
        var sign = measure.Point.Polarity switch
        {
            Polarity.CentreNegative => "− ",
            Polarity.CentrePositive => "+ ",
            _ => measure.Point.Alternates == true ? "~ " : "± ",
        };
        return sign + FigureDisplay.Outwards(measure.ExpectedVolts);
    }

    /// <summary>What it did show; empty where it was not measured.</summary>
    public static string Read(JudgedMeasure measure) => measure switch
    {
        { Measure: BenchMeasure.Draw } => measure.ReadAmps is { } amps ? FigureDisplay.Said(amps) : "",
        { ReadVolts: { } volts } => $"{(measure.ReadPolarity == Polarity.CentrePositive ? "+" : "")}{volts}".Replace('-', '−'),
        _ => "",
    };
}
