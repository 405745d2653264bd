using Loadmark.Core.Checks;
using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Texts;

namespace Loadmark.Workshop.Asking;

/// <summary>
/// Judges voltage, kind of current, polarity and plug of loads on one outlet, as <see cref="Suitability"/> does, in plain words. The loads
/// are alike in all of that, so that one sentence holds of them all.
/// </summary>
/// <param name="loads">The loads, at least one.</param>
/// <param name="feed">What feeds them.</param>
internal sealed class FeedPoints(IReadOnlyList<WiredLoad> loads, WiredFeed feed)
{
    private readonly FeedPoint _point = FeedPoint.Of(feed);
    private readonly string _load = ThingNames.List(loads.Select(static load => load.Id));
    private readonly string _are = Phrases.Is(loads.Count);
    private readonly string _they = Phrases.Verb(loads.Count, "it", "they");
    private readonly string _them = Phrases.Verb(loads.Count, "it", "them");
    private readonly string _outlet = ThingNames.Of(feed.Outlets[0].Rating);

    private LoadRating Rating => loads[0].Rating;

    private Suitability Suits => Suitability.Of(_point, Rating);

    /// <summary>The loads of a rig that are fed, those that are alike together.</summary>
    /// <param name="wired">The rig with its wiring.</param>
    public static IEnumerable<FeedPoints> Of(WiredRig wired) => wired.Feeds.Items.SelectMany(static feed => feed.Loads
        .GroupBy(static load => (
            load.Rating.Voltage,
            load.Rating.Form,
            load.Rating.TakesEitherForm,
            load.Rating.Polarity,
            load.Rating.Plug,
            load.Rating.IsDigital))
        .Select(alike => new FeedPoints([.. alike], feed)));

    /// <summary>The points.</summary>
    public IEnumerable<JudgedPoint> Judge() => [Volts(), Form(), Polarity(), Plug()];

    private static JudgedPoint Point(PlugInAspect aspect, PointState state, string working) =>
        new(aspect, state, SentenceCase.Capital(working));

    private JudgedPoint Volts()
    {
        const PlugInAspect aspect = PlugInAspect.Volts;
        var wanted = Rating.Voltage.Value;
        if (!Rating.Voltage.IsKnown && Rating.Load.Label?.Mains is { } mains)
            return Point(aspect, PointState.Bad, $"{_load} {_are} made for mains, {mains.Volts}, and {_outlet} gives no mains.");
        if (!Rating.Voltage.IsKnown)
            return Point(aspect, PointState.Unsure, $"nothing tells what voltage {_load} {_are} made for.") with
            {
                Ask = $"What voltage {_are} {_load} made for? More than that can destroy {_them}.",
            };
        if (_point.Highest is not { } highest)
            return Point(aspect, PointState.Unsure, $"nothing tells what voltage {_outlet} gives.") with
            {
                Ask = $"What voltage does {_outlet} give? Read its label, and measure it with a meter.",
            };

        var given = _point.Volts ?? highest;
        var most = wanted.High * (1 + VoltageBand.Allowed);
        var least = wanted.Low * (1 - VoltageBand.Allowed);
        var both = $"{_load} {_are} made for {wanted} and {_outlet} gives {given}";
        if (Suits.NotTooHigh == Fit.No)
            return given > most
                ? Point(aspect, PointState.Bad, $"{both}: over {most} ({wanted.High} + 10 %) {_they} can be damaged.")
                : Point(
                    aspect,
                    PointState.Bad,
                    $"{both}, and {highest} until enough is drawn: over {most} ({wanted.High} + 10 %) {_they} can be damaged.");
        if (Suits.NotTooHigh == Fit.NotKnown)
            return Point(
                aspect,
                PointState.Unsure,
                $"{both}, but it may stand at {_point.MayStandAt ?? highest} while little is drawn: "
                + "it does not say that it is regulated.") with
            {
                Ask = $"Is {_outlet} regulated? Measure it with nothing plugged in: over {most} it can damage {_load}.",
            };
        return Suits.Level switch
        {
            VoltageFit.TooLow => Point(
                aspect,
                PointState.Bad,
                $"{both}: under {least} ({wanted.Low} − 10 %) {_they} {Phrases.Verb(loads.Count, "does", "do")} not run."),
            VoltageFit.Starved => Point(
                aspect,
                PointState.Unsure,
                $"{both}: {_they} {Phrases.Verb(loads.Count, "runs", "run")}, with less headroom in the sound.") with
            {
                If = $"less headroom in the sound of {_load} is wanted: {given} instead of {wanted}",
            },
            VoltageFit.Low => Point(aspect, PointState.Unsure, $"{both}: a little less than it should be.") with
            {
                If = $"{_load} {Phrases.Verb(loads.Count, "runs", "run")} on {given}, a little less than {wanted.Low}",
            },
            _ when Suits.IsHigh => Point(
                aspect, PointState.Unsure, $"{both}: a little more than it should be; over {most} {_they} could be damaged.") with
            {
                If = $"{_load} {Phrases.Verb(loads.Count, "bears", "bear")} {highest}, a little more than {wanted.High}",
            },
            _ when feed.Feed.At.Count > 0 && feed.Outlets[0].Rating.Settings.Skip(1).Any() =>
                Point(aspect, PointState.Unsure, $"{both}, set to {given}.") with
                {
                    If = $"{_outlet} is set to {given} before it is plugged in",
                },
            _ => Point(aspect, PointState.Good, $"{both}."),
        };
    }

    private JudgedPoint Form()
    {
        const PlugInAspect aspect = PlugInAspect.Form;
        var (given, wanted) = (_point.Form, Rating.Form);
        if (Suits.Form == Fit.No)
            return Point(
                aspect,
                PointState.Bad,
                $"{_outlet} gives {Word(given.Value)}, {_load} {_are} made for {Word(wanted.Value)}: the wrong kind can destroy {_them}.");
        if (Rating.TakesEitherForm)
            return Point(aspect, PointState.Good, $"{_load} {Phrases.Verb(loads.Count, "takes", "take")} direct and alternating current.");
        if (Suits.Form == Fit.NotKnown)
        {
            var (unknown, number) = given.IsKnown ? (_load, loads.Count) : (_outlet, 1);
            return Point(aspect, PointState.Unsure, $"nothing tells whether {unknown} {Phrases.Is(number)} d.c. or a.c.") with
            {
                Ask = $"{SentenceCase.Capital(Phrases.Is(number))} {unknown} d.c. (⎓) or a.c. (~)? The wrong kind can destroy {_load}.",
            };
        }

        return Assumed(given, wanted) is var (who, count)
            ? Point(
                aspect,
                PointState.Unsure,
                $"{who} {Phrases.Verb(count, "does", "do")} not say d.c. or a.c.: taken as {Word(wanted.Value)}, "
                + $"{ThingNames.AsUsual}.") with
            {
                // What is said of the polarity says this too.
                If = Assumed(_point.Polarity, Rating.Polarity) is not null
                    ? null
                    : $"{who} {Phrases.Is(count)} for {Word(wanted.Value)}, {ThingNames.AsUsual}: no “AC” or “~” beside the voltage",
            }
            : Point(aspect, PointState.Good, $"both are {Word(given.Value)}.");
    }

    private JudgedPoint Polarity()
    {
        const PlugInAspect aspect = PlugInAspect.Polarity;
        var (given, wanted) = (_point.Polarity, Rating.Polarity);
        if (_point.Form is { IsKnown: true, Value: SupplyForm.Alternating }
            || Rating.Form is { IsKnown: true, Value: SupplyForm.Alternating })
            return Point(aspect, PointState.Good, "alternating current has no polarity.");
        if (Suits.Polarity == Fit.No)
            return Point(
                aspect,
                PointState.Bad,
                $"{_outlet} is {PolarityText.Of(given.Value)}, {_load} {_are} {PolarityText.Of(wanted.Value)}: "
                + $"the wrong way round can destroy {_them}.");
        if (Suits.Polarity == Fit.NotKnown)
        {
            var (unknown, number) = given.IsKnown ? (_load, loads.Count) : (_outlet, 1);
            return Point(aspect, PointState.Unsure, $"nothing tells the polarity of {unknown}.") with
            {
                Ask = $"{SentenceCase.Capital(Phrases.Is(number))} {unknown} centre negative or centre positive? Look for the drawing of "
                    + $"the plug; the wrong way round can destroy {_load}.",
            };
        }

        return Assumed(given, wanted) is var (who, count)
            ? Point(
                aspect,
                PointState.Unsure,
                $"{who} {Phrases.Verb(count, "shows", "show")} no polarity: taken as {PolarityText.Of(wanted.Value)}, "
                + $"{ThingNames.AsUsual}.") with
            {
                If = $"{who} {Phrases.Is(count)} "
                    + $"{(Assumed(_point.Form, Rating.Form) is null ? "" : "for direct current, ")}{PolarityText.Of(wanted.Value)}, "
                    + $"{ThingNames.AsUsual}: look for the drawing of the plug",
            }
            : Point(aspect, PointState.Good, $"both are {PolarityText.Of(given.Value)}.");
    }

    private JudgedPoint Plug()
    {
        const PlugInAspect aspect = PlugInAspect.Plug;
        var (given, wanted) = (_point.Plug, Rating.Plug);
        if (Suits.Plug == PlugFit.None && Suits.PlugIsKnown)
            return Point(
                aspect,
                PointState.Bad,
                $"the plug is {given.Value}, {_load} {Phrases.Verb(loads.Count, "takes", "take")} {wanted.Value}: it does not go in.");
        if (given.IsAssumed || wanted.IsAssumed)
        {
            var who = given.IsAssumed && wanted.IsAssumed
                ? $"neither {_load} nor {_outlet} gives"
                : $"{(given.IsAssumed ? _outlet : _load)} {(given.IsAssumed ? "does" : Phrases.Verb(loads.Count, "does", "do"))} not give";
            return Point(
                aspect,
                PointState.Unsure,
                $"{who} the size of the plug. Most 9 V pedals take {Core.Gear.Plug.Common}: see that it goes in and holds.");
        }

        return Suits.Plug == PlugFit.Loose
            ? Point(
                aspect,
                PointState.Unsure,
                $"the plug is {given.Value}, {_load} {Phrases.Verb(loads.Count, "takes", "take")} {wanted.Value}: "
                + "it goes in and may not hold.") with
            {
                If = $"a plug of {given.Value} holds in {_load}",
            }
            : Point(aspect, PointState.Good, $"both plugs are {given.Value}.");
    }

    /// <summary>Of which of the two a figure is taken for granted; null where both are stated or follow from what is.</summary>
    private (string Who, int Count)? Assumed<T>(Figure<T> given, Figure<T> wanted)
        where T : struct => (given.IsAssumed, wanted.IsAssumed) switch
        {
            (true, true) => ($"{_load} and {_outlet}", loads.Count + 1),
            (true, false) => (_outlet, 1),
            (false, true) => (_load, loads.Count),
            _ => null,
        };

    private static string Word(SupplyForm form) => form == SupplyForm.Direct ? "direct current" : "alternating current";
}
