using Loadmark.Core.Readings;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;
using Loadmark.Web.Texts;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>What was measured of a load, which readings do not count and why, and what the figure comes to.</summary>
public sealed partial class GearReadingsPart : ComponentBase
{
    private LoadMeasurements? _figures;
    private HashSet<Guid> _outliers = [];
    private Guid _read;
    private DrawKind _kind;
    private string _current = "";
    private string _duration = "";
    private string _meter = "";
    private string _note = "";
    private string? _fault;

    /// <summary>The load whose readings are shown.</summary>
    [Parameter, EditorRequired] public LibraryGear Gear { get; set; } = null!;

    /// <summary>Told when the readings, and with them the load's figure, have changed.</summary>
    [Parameter] public EventCallback OnMeasured { get; set; }

    [Inject] private LibraryEditor Editor { get; set; } = null!;
    [Inject] private TimeProvider Clock { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (_read == Gear.Id)
            return;
        _read = Gear.Id;
        try
        {
            Show(await Editor.MeasuredAsync(Gear.Id));
        }
        catch (StorageException fault)
        {
            _fault = fault.Message;
        }
    }

    private void Show(LoadMeasurements figures)
    {
        _figures = figures;
        _outliers = [.. LeftOut(figures, DrawKind.Running, figures.Running), .. LeftOut(figures, DrawKind.Starting, figures.Starting)];
    }

    private static IEnumerable<Guid> LeftOut(LoadMeasurements figures, DrawKind kind, MeasuredDraw? draw)
    {
        var counted = figures.Readings.Where(reading => !reading.IsStruckOut && reading.Reading.Kind == kind).ToList();
        return (draw?.LeftOut ?? []).Items.Select(index => counted[index].Id);
    }

    private Task StrikeOutAsync(StoredReading reading) => DoAsync(() => Editor.StrikeOutAsync(Gear.Id, reading.Id, !reading.IsStruckOut));

    private async Task AddAsync()
    {
        _fault = null;
        Seconds? duration = null;
        MeterAccuracy? accuracy = null;
        if (!QuantityReader.TryRead<Ampere>(_current.Trim(), out var current, out var problem))
            _fault = T["Reading: {0}. Type a current such as 210 mA.", problem!];
        else if (_kind == DrawKind.Starting && _duration.Trim().Length > 0)
            duration = QuantityReader.TryRead<Second>(_duration.Trim(), out var time, out problem)
                ? time
                : Wrong<Seconds>(T["For how long: {0}. Type a time such as 1.5 s.", problem!]);
        if (_fault is null && _meter.Trim().Length > 0)
            accuracy = MeterAccuracyReader.TryRead(_meter, out var read, out problem)
                ? read
                : Wrong<MeterAccuracy>(T["Meter: {0}.", problem!]);
        if (_fault is not null)
            return;
        var note = _note.Trim();
        await DoAsync(
            () => Editor.MeasureAsync(
                Gear.Id,
                new DrawReading
                {
                    Kind = _kind,
                    Current = current,
                    Duration = duration,
                    Meter = accuracy,
                    Taken = Clock.GetUtcNow(),
                    Note = note.Length == 0 ? null : note,
                }));
        if (_fault is null)
            (_current, _duration, _note) = ("", "", ""); // the meter is the same the next time
    }

    private TValue? Wrong<TValue>(string fault)
        where TValue : struct
    {
        _fault = fault;
        return null;
    }

    private async Task DoAsync(Func<Task<(LoadMeasurements Figures, GearOutcome Outcome)>> measure)
    {
        try
        {
            Show((await measure()).Figures);
        }
        catch (Exception fault) when (fault is StorageException or ArgumentException)
        {
            _fault = fault.Message;
        }

        await OnMeasured.InvokeAsync();
    }
}
