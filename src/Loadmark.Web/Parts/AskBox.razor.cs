using Loadmark.Core.Checks;
using Loadmark.Storage;
using Loadmark.Web.Texts;
using Loadmark.Workshop.Asking;
using Loadmark.Workshop.Solves;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Answers "may I plug this in?" while it is typed.</summary>
public sealed partial class AskBox : ComponentBase, IDisposable
{
    private const int MostRows = 8;

    private readonly LatestOnly<PlugInAnswer> _solve = new();
    private ElementReference _first;
    private string _loads = "";
    private string _supplies = "";
    private bool _isChain;
    private string? _complaint;
    private PlugInAnswer? _answer;

    [Inject] private RigStore Store { get; set; } = null!;
    [Inject] private NavigationManager Address { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <summary>The severity that the answer weighs as; null where nothing is to be plugged in yet.</summary>
    private Severity? Severity => _answer switch
    {
        null => null,
        { Verdict: PlugInVerdict.FindOut } => Core.Checks.Severity.Unsure,
        { Points.Count: 0 } => null,
        { Verdict: PlugInVerdict.Yes } => Core.Checks.Severity.Good,
        { Verdict: PlugInVerdict.YesIf } => Core.Checks.Severity.Margin,
        { Check.Verdict: Core.Checks.Severity.Harm } => Core.Checks.Severity.Harm,
        _ => Core.Checks.Severity.Fails,
    };

    private string Look => Severity is { } severity && _complaint is null ? $"answer-{severity.ToString().ToLowerInvariant()}" : "";

    /// <inheritdoc/>
    public void Dispose() => _solve.Dispose();

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
            await _first.FocusAsync(preventScroll: true);
    }

    private static List<string> Lines(string text) =>
        [.. text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

    private static int Rows(string text) => Math.Clamp(text.Count(static character => character == '\n') + 1, 1, MostRows);

    private static List<string> Unread(PlugInAnswer answer) =>
        [.. answer.Rig.Loads.Items.Select(static load => load.Label).Concat(answer.Rig.Supplies.Items.Select(static supply => supply.Label))
            .SelectMany(static label => label?.Unread ?? []).Select(static piece => $"“{piece.Text}”")];

    private string NameOf(PlugInAspect aspect) => aspect switch
    {
        PlugInAspect.Volts => T["Volts"],
        PlugInAspect.Form => T["d.c. or a.c."],
        PlugInAspect.Polarity => T["polarity"],
        PlugInAspect.Amps => T["milliamps"],
        PlugInAspect.Start => T["Starting"],
        PlugInAspect.Plug => T["Plug"],
        _ => T["sharing"],
    };

    private static Severity SignOf(PointState state) => state switch
    {
        PointState.Good => Core.Checks.Severity.Good,
        PointState.Unsure => Core.Checks.Severity.Unsure,
        _ => Core.Checks.Severity.Harm,
    };

    private static string ClassOf(PointState state) => $"sev-{SignOf(state).ToString().ToLowerInvariant()}";

    private string WordOf(PointState state) => state switch
    {
        PointState.Good => T["fits"],
        PointState.Unsure => T["look once"],
        _ => T["does not fit"],
    };

    private async Task AnswerAsync()
    {
        var (loads, supplies) = (Lines(_loads), Lines(_supplies));
        if (loads.Count == 0)
        {
            (_complaint, _answer) = (null, null);
            return;
        }

        if (AskedRig.Of(new PlugInQuestion { Loads = loads, Supplies = supplies, IsChain = _isChain }, out var complaint) is not { } asked)
        {
            (_complaint, _answer) = (complaint, null);
            return;
        }

        if (await _solve.RunAsync(stop => PlugInAdvisor.Answer(asked, stop)) is { } answer)
            (_complaint, _answer) = (null, answer);
    }

    private async Task KeepAsync()
    {
        if (_answer is not { } answer)
            return;
        var kept = await Store.AddAsync(answer.Rig.Name, answer.RigText);
        Address.NavigateTo($"rig/{kept.Id}");
    }
}
