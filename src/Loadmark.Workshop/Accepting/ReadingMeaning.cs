using Loadmark.Core.Acceptance;
using Loadmark.Core.Display;
using Loadmark.Core.Ratings;

namespace Loadmark.Workshop.Accepting;

/// <summary>What a voltage that did not pass most likely means, and what to do next: the likeliest cause first.</summary>
internal sealed class ReadingMeaning
{
    private readonly AcceptancePlan _plan;
    private readonly BenchSession _session;
    private readonly JudgedMeasure _judged;
    private readonly AcceptancePoint _point;
    private readonly Volts _size;

    private ReadingMeaning(AcceptancePlan plan, BenchSession session, JudgedMeasure judged) =>
        (_plan, _session, _judged, _point, _size) =
        (plan, session, judged, judged.Point, new Volts(Math.Abs(judged.ReadVolts!.Value.Value)));

    private string Load => _point.Plug.Load.Id;

    private string Outlets => _point.Plug.Lead.Feed.OutletNames;

    private int Lead => _point.Plug.Lead.Number;

    private bool IsOpen => _judged.Measure == BenchMeasure.Open;

    private string KeepOut => IsOpen ? $"Do not plug {Load} in. " : $"Pull the plug of {Load} out. ";

    /// <summary>The judged voltage with what it means and what is next.</summary>
    public static JudgedMeasure Tell(AcceptancePlan plan, BenchSession session, JudgedMeasure judged)
    {
        if (judged.Judged == Conformity.Pass)
            return judged;
        var meaning = new ReadingMeaning(plan, session, judged);
        var (means, next) = judged.Judged == Conformity.Fail ? meaning.OfFailure() : meaning.OfDoubt();
        return judged with { Means = means, Next = next };
    }

    private (string Means, string Next) OfFailure()
    {
        if (_size < AcceptanceJudge.NothingOf(_judged.ExpectedVolts))
            return OfNothing();
        if (_judged.ReadPolarity is { } read && _point.Polarity is { } polarity && read != polarity)
            return (
                $"Reversed: {PolarityText.Of(read)} where {PolarityText.Of(polarity)} is drawn."
                + $"{Harm(_size > _point.Bears)} Lead {Lead} exchanges the contacts or is another one, or the probes were exchanged.",
                $"{KeepOut}Look at the probes (red on the centre), then change lead {Lead} or wire it the other way round.");
        return _size > (_judged.ExpectedVolts?.High ?? _size) ? OfTooMuch() : OfTooLittle();
    }

    private (string Means, string Next) OfNothing() => (
        $"Nothing arrives: {Outlets} is off or in protection, lead {Lead} is broken or not pushed in"
        + (_point.Alternates == true ? "." : ", or it is alternating current, which a d.c. range shows as nothing."),
        $"{KeepOut}Measure at {Outlets} itself: volts there mean a broken lead.");

    private (string Means, string Next) OfTooMuch()
    {
        if (Setting() is { } setting)
            return (
                $"The switch of {setting.Outlet} stands at {setting.Volts}.{Harm(_size > _point.Bears)}",
                $"{KeepOut}Set it to {FigureDisplay.Printed(_point.Plug.Lead.Feed.Outlets[0].Volts)} and measure again.");
        var others = Givers();
        if (others.Length > 0)
            return WrongOutlet(others);
        if (!IsOpen)
            return (
                "More than with everything running: hardly anything is drawn.",
                $"Look whether {Load} and what hangs on the same lead are on, then measure again.");
        return (
            $"More than {Outlets} is drawn to give.{Harm(_size > _point.Bears)} It is not regulated, or not the supply of the drawing.",
            $"{KeepOut}Measure at {Outlets} itself, and look whether it is the supply that is drawn.");
    }

    private (string Means, string Next) OfTooLittle()
    {
        if (Setting() is { } setting)
            return ($"The switch of {setting.Outlet} stands at {setting.Volts}.", $"{KeepOut}Set it as drawn and measure again.");
        if (Part() is { } part)
            return (part, $"{KeepOut}Look whether both outlets of lead {Lead} are plugged in and on.");
        var others = Givers();
        if (others.Length > 0)
            return WrongOutlet(others);
        if (IsOpen)
            return (
                $"Less than {Outlets} is drawn to give with nothing plugged in: a tired supply, or not the one of the drawing.",
                $"{KeepOut}Measure at {Outlets} itself, with nothing else on it.");
        var ohms = ExtraOhms();
        return (
            $"More is lost on the way than drawn{ohms}: a thinner or longer lead, a poor contact, or more is drawn than the rig tells.",
            $"Measure at {Outlets} itself: as low there means that too much is drawn. Else change lead {Lead}.");
    }

    private (string Means, string Next) WrongOutlet(string others)
    {
        var means = $"As much as {others} gives.{Harm(_size > _point.Bears)}";

        // All plugs of a lead are in the same outlet: where another of them was right, this one is not of the lead.
        var isOfOther = _plan.Points.Items.Any(point => point.Plug.Lead == _point.Plug.Lead && point != _point
            && _session.Of(point.Name).Open is { } other && point.Open?.Contains(new Volts(Math.Abs(other.Value.Value))) == true);
        return isOfOther
            ? ($"{means} Another plug of lead {Lead} was found right, so this is likely to be the plug of another lead.",
                $"{KeepOut}Look for the label on the lead.")
            : ($"{means} Lead {Lead} is likely to be in the wrong outlet.",
                $"{KeepOut}Look where lead {Lead} comes from: it belongs into {Outlets}.");
    }

    private (string Means, string Next) OfDoubt()
    {
        if (_judged.ExpectedVolts is null)
            return (
                $"The rig does not tell what {Load} must find there{Untold()}.",
                IsOpen
                    ? "Find out what the supply gives and put it into the rig file."
                    : $"Measure the draw and put it into the rig file (run), for {Load} and what hangs on the same supply.");
        if (_point.Alternates is null)
            return (
                $"Nobody knows whether {Outlets} gives direct or alternating current, so a reading in one range proves nothing.",
                $"Measure in both ranges and put it into the rig file before {Load} is plugged in.");
        if (_point is { Alternates: false, Polarity: null })
            return (
                $"Neither the supply nor {Load} tells a polarity"
                + (_judged.ReadPolarity is { } read ? $"; here is {PolarityText.Of(read)}." : "."),
                $"Find out what {Load} needs before it is plugged in, and put it into the rig file.");
        if (_point.Alternates == false && _judged.ReadPolarity is null && _size.Value > 0)
            return (
                "Which way round is not told: the reading has no sign.",
                $"Type it with its sign, +{_size} or −{_size}. {AcceptancePlan.ProbeText}");
        return (
            MeterMeaning.Of(_session.VoltsAccuracy is null, "the volts range"),
            _session.VoltsAccuracy is null
                ? MeterMeaning.NextForAccuracy("volts accuracy")
                : "Measure in a finer range or with a better meter; until then it counts as not proven.");
    }

    private static string Harm(bool? isMoreThanItBears) => isMoreThanItBears == true ? " It would damage the load." : "";

    /// <summary>The setting of a switch other than the drawn one that gives what was read; null where none does.</summary>
    private (string Outlet, Volts Volts)? Setting()
    {
        if (_point.Plug.Lead.Feed.Outlets is not [var outlet] || outlet.Rating.Modes.Length < 2)
            return null;
        foreach (var mode in outlet.Rating.Modes)
        {
            if (mode.Volts is { } range && outlet.Volts is { } set && !range.Contains(set) && IsAbout(range.Low))
                return (outlet.Name, range.Low);
        }

        return null;
    }

    /// <summary>Of joined outlets: that only one of them gives; null where that is not what was read.</summary>
    private string? Part()
    {
        var feed = _point.Plug.Lead.Feed;
        if (feed.Joined != Core.Rigs.Joint.Series)
            return null;
        foreach (var outlet in feed.Outlets)
        {
            if (outlet.Volts is { } volts && IsAbout(volts))
                return $"As much as one of {Outlets} gives: the other gives nothing, or the lead joins them otherwise.";
        }

        return null;
    }

    /// <summary>The other outlets of the rig that give what was read; empty for none.</summary>
    private string Givers()
    {
        var outlets = _plan.Plugs.Plugs.Items.SelectMany(static plug => plug.Lead.Feed.Outlets)
            .Where(outlet => outlet.Volts is { } volts && IsAbout(volts) && !_point.Plug.Lead.Feed.Outlets.Contains(outlet))
            .Select(static outlet => outlet.Name).Distinct().ToList();
        return outlets.Count switch
        {
            0 => "",
            1 => outlets[0],
            _ => $"{outlets[0]} or {(outlets.Count == 2 ? outlets[1] : $"{outlets.Count - 1} others")}",
        };
    }

    /// <summary>How much resistance there is on the way that is not drawn, as far as the draw was measured.</summary>
    private string ExtraOhms()
    {
        if (_session.Of(_point.Name).Draw is not { Value.Value: > 0 } draw || _judged.ExpectedVolts is not { } expected)
            return "";
        return $" (about {new Ohms(Math.Round((expected.Low - _size).Value / draw.Value.Value, 1))} at {FigureDisplay.Said(draw.Value)})";
    }

    private string Untold()
    {
        if (IsOpen || _point.Plug.Load.Rating.Running is not null)
            return "";
        return ": its draw is not known";
    }

    private bool IsAbout(Volts volts) => Math.Abs((_size - volts).Value) <= VoltageBand.Fine * volts.Value;
}
