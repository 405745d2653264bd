using Loadmark.Shapes;
using Loadmark.Simulation.Spreading;

namespace Loadmark.Answers;

/// <summary>The spread of a rig's figures as JSON.</summary>
internal static class SpreadJson
{
    private static JsonShape<Chance> Chance { get; } = new JsonShape<Chance>("Chance", "How often something held.")
        .Count("held", static chance => chance.Held, "Samples in which it held.")
        .Count("of", static chance => chance.Samples, "Samples.")
        .Figure("share", static chance => (decimal)chance.Share, "Their share, 0 to 1.")
        .Figure("low", static chance => (decimal)chance.Low, "The lower end of its interval.")
        .Figure("high", static chance => (decimal)chance.High, "The upper end of its interval.");

    private static JsonShape<SampledPart<SpreadLoad>> Load { get; } = new JsonShape<SampledPart<SpreadLoad>>("SpreadLoad", "A load.")
        .Text("load", static load => load.Part.Load, "Its id.")
        .Percentiles("volts", "cornerVolts", "V", static load => load.IsStartUp ? null : load.Part.Volts)
        .Percentiles("lowestVolts", "cornerLowestVolts", "V", static load => load.IsStartUp ? load.Part.Volts : null)
        .Percentiles("amps", "cornerAmps", "A", static load => load.Part.Amps)
        .Percentiles("runsAfterSeconds", "cornerRunsAfterSeconds", "s", static load => load.Part.RunsAfter)
        .Value("runs", static load => load.Part.Runs, Chance)
        .Word("cornerState", static load => load.Part.Corner, JsonWords.Of, "How it fares where everything is at its worst.");

    private static JsonShape<SampledPart<SpreadOutlet>> Outlet { get; } = new JsonShape<SampledPart<SpreadOutlet>>(
            "SpreadOutlet", "An outlet.")
        .Text("outlet", static outlet => outlet.Part.Outlet.ToString(), "supply/outlet.")
        .Percentiles("volts", "cornerVolts", "V", static outlet => outlet.Part.Volts)
        .Percentiles("amps", "cornerAmps", "A", static outlet => outlet.IsStartUp ? null : outlet.Part.Amps)
        .Percentiles("peakAmps", "cornerPeakAmps", "A", static outlet => outlet.IsStartUp ? outlet.Part.Amps : null)
        .Figure(
            "limitAmps", static outlet => outlet.Part.Limit?.Value, "What it can give, A; null where it is not known.", Presence.OrNull);

    /// <summary>The shape of a spread.</summary>
    public static JsonShape<SpreadResult> Spread { get; } = new JsonShape<SpreadResult>(
            "Spread", "What becomes of the figures when those of the rig are not known exactly.")
        .Count("samples", static spread => spread.Samples, "Samples that were computed.")
        .Count("asked", static spread => spread.Asked, "Samples that were asked for.")
        .Count("uncomputed", static spread => spread.Uncomputed, "Samples that could not be computed.")
        .Seed("seed", static spread => spread.Seed, "The seed that they follow from, 64 bits.")
        .Text("quantiles", static _ => "5 %, 50 %, 95 %; Hyndman and Fan, type 7", "Which quantiles the lists of three are.")
        .Text("interval", static _ => "95 %; Wilson, score", "How the ends of a chance are computed.")
        .Value("runs", static spread => spread.Runs, Chance)
        .List(
            "loads", static spread => spread.Loads.Items.Select(load => new SampledPart<SpreadLoad>(load, spread.IsStartUp)), Load,
            "The loads.")
        .List(
            "outlets", static spread => spread.Outlets.Items.Select(outlet => new SampledPart<SpreadOutlet>(outlet, spread.IsStartUp)),
            Outlet,
            "The outlets.")
        .Texts("leftOut", static spread => spread.LeftOut, "What is not sampled.")
        .Texts("openUpwards", static spread => spread.OpenUpwards, "What may be larger without a bound that is known.")
        .List("assumptions", static spread => spread.Assumptions, AssumptionJson.Assumption, "The widths that were taken.");

    private static JsonShape<T> Percentiles<T, TUnit>(
        this JsonShape<T> shape, string key, string corner, string unit, Func<T, Percentiles<TUnit>?> of)
        where TUnit : struct, IUnit =>
        shape.When(part => of(part) is not null, members => members
            .Value(
                key, part => Numbers(of(part)!),
                new JsonTuple(
                    $"Its 5 %, 50 % and 95 % quantiles, {unit}; null where a sample of that rank has none.", 3,
                    new ValueDescription(JsonKind.Number, "A quantile.") { OrNull = true }))
            .Figure(
                corner, part => of(part)!.Corner?.Value, $"It where everything is at its worst, {unit}; null where it has none.",
                Presence.OrNull));

    private static IReadOnlyList<decimal?> Numbers<TUnit>(Percentiles<TUnit> figure)
        where TUnit : struct, IUnit =>
        [figure.Low?.Value, figure.Median?.Value, figure.High?.Value];
}
