using System.Globalization;
using Loadmark.Core.Display;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Starting;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>The first seconds, drawn.</summary>
public sealed partial class StartPlots : ComponentBase
{
    private const int MostEvents = 16;
    private const double LeastRange = 0.002;

    /// <summary>What is shown at first, s: at least this much, and this many times as long as until the last event.</summary>
    private const double LeastShown = 0.05;
    private const double EventShare = 2.5;

    /// <summary>How long after an event it shows in the waveforms, s.</summary>
    private const double JustAfter = 0.00002;

    /// <summary>In how many seconds what is shown can be played.</summary>
    private static readonly int[] Paces = [5, 10, 30, 120];

    private static readonly TimeSpan Tick = TimeSpan.FromMilliseconds(100);

    private CancellationTokenSource? _playing;
    private int _pace = 10;

    private StartAnswer? _seen;
    private string _outlet = "";
    private double _from;
    private double _to;
    private double _cursor;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    /// <summary>What was computed.</summary>
    [Parameter, EditorRequired] public StartAnswer Answer { get; set; } = null!;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;
    [Inject] private TimeProvider Clock { get; set; } = null!;

    private List<StartedOutlet> Fed => [.. Answer.Result.Outlets.Items.Where(static outlet => !outlet.IsFree)];

    private IReadOnlyList<string> Loads =>
        [.. (Answer.Rig.Wired ?? []).Items.Where(feed => feed.From.Items.Any(outlet => outlet.ToString() == _outlet))
            .SelectMany(static feed => feed.To.Items)];

    private bool IsPlaying => _playing is not null;

    /// <summary>How much slower or faster than it is the film is, to two digits.</summary>
    private string SaysPace
    {
        get
        {
            var slower = _pace / Math.Max(LeastRange, _to - _from);
            return slower >= 1
                ? T["slow motion: {0} times slower than it is", TwoDigits(slower)]
                : T["{0} times faster than it is", TwoDigits(1 / slower)];
        }
    }

    private bool IsWhole => _from <= 0 && _to >= Answer.Seconds;

    private string Moment => Seconds(_cursor);

    private string Says
    {
        get
        {
            var failing = Answer.Result.Loads.Items.Where(static load => load.State != LoadState.Runs).Select(static load => load.Load)
                .ToList();
            return (failing.Count, Answer.Result.SettledAfter) switch
            {
                (0, { } after) => T["Everything comes up and stays up; at rest after {0}.", Seconds((double)after.Value)],
                (0, null) => T["Everything comes up and stays up."],
                _ => T["Not everything comes up properly: {0}.", string.Join(", ", failing)],
            };
        }
    }

    private IEnumerable<double> TableTimes =>
        Enumerable.Range(0, 21).Select(index => _from + ((_to - _from) * index / 20))
            .Concat(
                Answer.Result.Events.Items.Where(Concerns).Select(static happening => (double)happening.Time.Value)
                    .Where(time => time >= _from && time <= _to).Take(20))
            .Distinct().Order();

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (ReferenceEquals(_seen, Answer))
            return;
        _seen = Answer;
        if (!Fed.Exists(outlet => outlet.Outlet.ToString() == _outlet))
            _outlet = Fed.OrderByDescending(Strain).FirstOrDefault()?.Outlet.ToString() ?? "";
        Whole();

        // Where all that happens is over in a moment the rest is a flat line; what starts over and over shows in its first rounds.
        var events = Answer.Result.Events.Items.Where(Concerns).Select(static happening => (double)happening.Time.Value).ToList();
        if (events.Count > 0)
            _to = events.Count > MostEvents ? events[MostEvents] : Math.Min(Answer.Seconds, Math.Max(LeastShown, EventShare * events[^1]));
        GoTo(Math.Min(Answer.Seconds, Telling()));
    }

    /// <inheritdoc/>
    public void Dispose() => Pause();

    /// <summary>
    /// The moment that tells most of the outlet, s: where a load drops out or the outlet gives up; else where its last load has just begun
    /// to start, and not the first microseconds, in which capacitors charge and every gauge is full.
    /// </summary>
    private double Telling()
    {
        var events = Answer.Result.Events.Items.Where(Concerns).ToList();
        var telling = events.Find(
            static happening => happening.Kind is StartUpEventKind.DropsOut or StartUpEventKind.SwitchesOff or StartUpEventKind.FuseTrips)
            ?? events.FindLast(static happening => happening.Kind == StartUpEventKind.Starts);

        // A waveform holds at a jump what was before it.
        return telling is { } found ? (double)found.Time.Value + JustAfter : 0;
    }

    /// <summary>Plays what is shown from the moment on, or from its beginning where that is at its end; pauses what plays.</summary>
    private async Task PlayAsync()
    {
        if (IsPlaying)
        {
            Pause();
            return;
        }

        using var playing = _playing = new CancellationTokenSource();
        using var timer = new PeriodicTimer(Tick, Clock);
        if (_cursor < _from || _cursor >= _to)
            ShowAt(_from);
        var (began, at) = (Clock.GetTimestamp(), _cursor);
        try
        {
            while (_cursor < _to && await timer.WaitForNextTickAsync(playing.Token))
            {
                ShowAt(Math.Min(_to, at + (Clock.GetElapsedTime(began).TotalSeconds * (_to - _from) / _pace)));
                StateHasChanged();
            }
        }
        catch (OperationCanceledException)
        {
            // Paused.
        }
        finally
        {
            if (ReferenceEquals(_playing, playing))
                _playing = null;
        }
    }

    private void Pause()
    {
        _playing?.Cancel();
        _playing = null;
    }

    /// <summary>Those with loads that do not come up first, then by how near the limit they come.</summary>
    private double Strain(StartedOutlet outlet)
    {
        var feeds = (Answer.Rig.Wired ?? []).Items.Where(feed => feed.From.Items.Contains(outlet.Outlet));
        var fails = feeds.SelectMany(static feed => feed.To.Items)
            .Any(id => Answer.Result.Loads.Items.Any(load => load.Load == id && load.State != LoadState.Runs));
        return (fails ? 1000 : 0) + (outlet is { PeakAmps: { } peak, Limit: { Value: > 0 } limit } ? (double)(peak / limit) : 0);
    }

    /// <summary>
    /// What an outlet gives at its peak, and for how long it is at its limit: ranges where they rest on how much charging capacitors take,
    /// which is assumed.
    /// </summary>
    private string PeakOf(StartedOutlet outlet)
    {
        var limit = FigureDisplay.Printed(outlet.Limit);
        if (outlet.Pulse is { } pulse)
        {
            var most = (double)pulse.OverLimitMost.Value;
            return most > 0
                ? T["{0}: peak {1}, at its limit of {2} for up to {3}.", outlet.Outlet, pulse.Peaks, limit, Seconds(most)]
                : T["{0}: peak {1}; limit {2}.", outlet.Outlet, pulse.Peaks, limit];
        }

        var peak = FigureDisplay.Said(outlet.PeakAmps);
        return outlet switch
        {
            { OverLimit.Value: > 0 } => T[
                "{0}: peak {1}, at its limit of {2} or over it for {3}.",
                outlet.Outlet,
                peak,
                limit,
                Seconds((double)outlet.OverLimit.Value)],
            { PeakAt: { } at } =>
                T["{0}: peak {1}, {2} after switch-on; limit {3}.", outlet.Outlet, peak, Seconds((double)at.Value), limit],
            _ => T["{0}: peak {1}; limit {2}.", outlet.Outlet, peak, limit],
        };
    }

    /// <summary>On what a peak rests that is a range, and what that means for the limit and for the curve.</summary>
    private string SaysOf(StartedOutlet outlet, PulseRange pulse)
    {
        var limited = pulse.OverLimitMost.Value > 0
            ? " " + T[
                "At its limit of {0} or over it for {1} to {2}.",
                FigureDisplay.Printed(outlet.Limit),
                Seconds((double)pulse.OverLimitLeast.Value),
                Seconds((double)pulse.OverLimitMost.Value)]
            : "";
        return $"{T["The peak of {0} is a range: {1}.", outlet.Outlet, pulse.Because]}{limited} "
            + $"{T["The curve is computed with what is assumed."]}";
    }

    private bool Concerns(StartUpEvent happening) => happening.Subject == _outlet || Loads.Contains(happening.Subject);

    private static string Text(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    private static string Seconds(double seconds) => new Quantity<Second>(Rounded(seconds)).ToString();

    private static string TwoDigits(double value)
    {
        var unit = Math.Pow(10, Math.Max(0, Math.Floor(Math.Log10(value)) - 1));
        return (value < 10 ? Math.Round(value, 1) : Math.Round(value / unit) * unit).ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>What a curve has at a moment, as a table shows it.</summary>
    private string ValueAt<TUnit>(Waveform? series, double time)
        where TUnit : struct, IUnit =>
        series is { } known ? new Quantity<TUnit>(Rounded(Answer.At(known, time))).ToString() : "?";

    private static decimal Rounded(double value) => (decimal)Math.Round(value, 5);

    private void Choose(string? outlet)
    {
        _outlet = outlet ?? _outlet;
        View.Light(_outlet);
    }

    private void Whole() => (_from, _to) = (0, Answer.Seconds);

    private void Zoom(double at, double factor)
    {
        var range = Math.Clamp((_to - _from) * factor, LeastRange, Answer.Seconds);
        var share = _to > _from ? (at - _from) / (_to - _from) : 0.5;
        _from = Math.Clamp(at - (share * range), 0, Answer.Seconds - range);
        _to = _from + range;
    }

    private void Wheel((double At, double Factor) turn) => Zoom(_from + (turn.At * (_to - _from)), turn.Factor);

    private void Point(double share) => GoTo(_from + (share * (_to - _from)));

    private void MoveCursor(ChangeEventArgs change)
    {
        if (double.TryParse(change.Value as string, NumberStyles.Float, CultureInfo.InvariantCulture, out var seconds))
            GoTo(seconds);
    }

    /// <summary>Goes to a moment by hand, which pauses what plays.</summary>
    private void GoTo(double seconds)
    {
        Pause();
        ShowAt(seconds);
    }

    private void ShowAt(double seconds)
    {
        _cursor = Math.Clamp(seconds, 0, Answer.Seconds);
        if (_cursor < _from || _cursor > _to)
            Whole();
        View.Show(Answer.ReadingsAt(_cursor), T["volts and amps {0} after switch-on", Moment]);
    }
}
