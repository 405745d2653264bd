using System.Collections.Immutable;
using Loadmark.Core.Acceptance;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Storage.Acceptances;
using Loadmark.Web.Metering;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Accepting;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Measuring a finished rig, reading by reading.</summary>
public sealed partial class AcceptPanel : ComponentBase, IDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private AcceptanceDesk? _desk;
    private Rig? _followed;
    private (string Point, BenchMeasure Measure)? _picked;
    private JudgedMeasure? _last;
    private GivenText? _given;
    private string? _problem;
    private string? _fault;
    private bool _isBusy;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    [Inject] private AcceptanceStore Store { get; set; } = null!;
    [Inject] private TimeProvider Clock { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private AcceptanceDesk Desk => _desk ??= new AcceptanceDesk(Store, View.Session.Kept!.Id, Clock);

    private ImmutableArray<JudgedMeasure> Steps => Desk.Result!.Measures.Items;

    /// <summary>What is measured now: what was picked, else the next that is needed, else a draw that was not measured.</summary>
    private JudgedMeasure? Current =>
        Steps.FirstOrDefault(one => _picked is { } picked && one.Point.Name == picked.Point && one.Measure == picked.Measure)
        ?? Desk.Result!.Next ?? Steps.FirstOrDefault(static one => one.Judged is null) ?? Steps.FirstOrDefault();

    private int Place => Current is { } current ? Steps.IndexOf(current) : 0;

    /// <inheritdoc/>
    public void Dispose()
    {
        _stop.Cancel();
        _stop.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (ReferenceEquals(_followed, View.Rig))
            return;
        _followed = View.Rig;
        try
        {
            await Desk.ShowAsync(View.Rig, _stop.Token);
            _fault = null;
        }
        catch (InvalidRigException fault)
        {
            _fault = fault.Message;
        }
        catch (OperationCanceledException)
        {
            // The page has gone.
        }
    }

    private string SentenceOf(AcceptanceVerdict verdict) => verdict switch
    {
        AcceptanceVerdict.Accepted => T["Built as drawn: every plug was found right, open and loaded."],
        AcceptanceVerdict.Refused => T["Not as drawn. Mend it before anything is plugged in."],
        _ => T["Not proven yet."],
    };

    private async Task TakeAsync(string typed)
    {
        if (Current is not { } current || _isBusy)
            return;
        var (point, measure) = (current.Point, current.Measure);
        await DoAsync(async () =>
        {
            _problem = await Desk.TakeAsync(point, measure, typed);
            if (_problem is not null)
                return;
            _last = Desk.Result!.Measures.Items.FirstOrDefault(one => one.Point.Name == point.Name && one.Measure == measure);
            _given = null;

            // A reading that did not pass stays in sight; the next one comes at a press.
            _picked = _last?.Judged == Conformity.Pass ? null : (point.Name, measure);
        });
    }

    /// <summary>Puts what the meter read into the field, if it is what is measured there.</summary>
    private void PutIn(MeterReading reading)
    {
        if (Current is not { } current)
            return;
        var isVolts = reading.Quantity == MeterQuantity.Volts;
        if (isVolts != (current.Measure != BenchMeasure.Draw))
            _problem = T[isVolts
                ? "the meter read volts, and a draw is measured here"
                : "the meter read amps, and volts are measured here"];
        else if (isVolts && current.Point.Alternates == true)
            _problem = T["the meter read direct volts, and this plug gives alternating current: type what its a.c. range shows"];
        else
            (_problem, _given) = (null, new GivenText(InstrumentText.Of(reading, Desk.Session)));
    }

    private void Step(int by)
    {
        var next = (Place + by + Steps.Length) % Steps.Length;
        Pick(Steps[next]);
    }

    private void Pick(JudgedMeasure measure)
    {
        _picked = (measure.Point.Name, measure.Measure);
        (_given, _problem, _last) = (null, null, null);
    }

    private Task TellAsync(BenchSession told) => DoAsync(() => Desk.TellAsync(told));

    private async Task DoAsync(Func<Task> work)
    {
        if (_isBusy)
            return;
        _isBusy = true;
        try
        {
            await work();
        }
        finally
        {
            _isBusy = false;
        }
    }
}
