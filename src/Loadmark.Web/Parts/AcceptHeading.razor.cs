using Loadmark.Core.Acceptance;
using Loadmark.Core.Readings;
using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Who measures, with which meter, where.</summary>
public sealed partial class AcceptHeading : ComponentBase
{
    private BenchSession? _shown;
    private string? _volts;
    private string? _amps;
    private string? _voltsFault;
    private string? _ampsFault;

    /// <summary>What was told so far.</summary>
    [Parameter, EditorRequired] public BenchSession Session { get; set; } = null!;

    /// <summary>Told what is told now.</summary>
    [Parameter] public EventCallback<BenchSession> OnTell { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <summary>Open until what a record cannot do without is told.</summary>
    private bool IsOpen => Session.By is null || Session.VoltsAccuracy is null;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (ReferenceEquals(_shown, Session))
            return;
        _shown = Session;
        if (_voltsFault is null)
            _volts = Session.VoltsAccuracy?.ToString();
        if (_ampsFault is null)
            _amps = Session.AmpsAccuracy?.ToString();
    }

    private Task TellAsync(BenchSession told) => OnTell.InvokeAsync(told);

    private Task VoltsAsync(string? typed)
    {
        (_volts, _voltsFault) = (typed, Read<Volt>(typed, out var accuracy));
        return _voltsFault is null ? TellAsync(Session with { VoltsAccuracy = accuracy }) : Task.CompletedTask;
    }

    private Task AmpsAsync(string? typed)
    {
        (_amps, _ampsFault) = (typed, Read<Ampere>(typed, out var accuracy));
        return _ampsFault is null ? TellAsync(Session with { AmpsAccuracy = accuracy }) : Task.CompletedTask;
    }

    /// <summary>What is wrong with an accuracy; null where nothing is. Nothing typed is not known.</summary>
    private static string? Read<TUnit>(string? typed, out PrintedAccuracy<TUnit>? accuracy)
        where TUnit : struct, IUnit
    {
        accuracy = null;
        if (typed is null)
            return null;
        if (!PrintedAccuracyReader.TryRead<TUnit>(typed, out var read, out var fault))
            return fault?.ToString();
        accuracy = read;
        return null;
    }
}
