using Loadmark.Core.Acceptance;
using Loadmark.Core.Readings;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Accepting;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>One reading to be taken.</summary>
public sealed partial class AcceptCard : ComponentBase
{
    private ElementReference _field;
    private bool _contradicts;
    private string _typed = "";
    private GivenText? _given;

    /// <summary>What is to be measured.</summary>
    [Parameter, EditorRequired] public JudgedMeasure Measure { get; set; } = null!;

    /// <summary>What is put into the field; another one is put in its place. Null for nothing.</summary>
    [Parameter] public GivenText? Given { get; set; }

    /// <summary>Why the last reading was not taken; null where it was.</summary>
    [Parameter] public string? Problem { get; set; }

    /// <summary>The reading that was taken last; null for none.</summary>
    [Parameter] public JudgedMeasure? Last { get; set; }

    /// <summary>Which of the readings this is, from 1.</summary>
    [Parameter] public int Number { get; set; }

    /// <summary>How many readings there are.</summary>
    [Parameter] public int Count { get; set; }

    /// <summary>Whether a reading is being taken.</summary>
    [Parameter] public bool IsBusy { get; set; }

    /// <summary>Told what was read, with its sign.</summary>
    [Parameter] public EventCallback<string> OnTake { get; set; }

    /// <summary>Told to go by so many readings.</summary>
    [Parameter] public EventCallback<int> OnStep { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <summary>Whether the reading has to have a sign.</summary>
    private bool HasSign => Measure.Measure != BenchMeasure.Draw && Measure.Point.Alternates != true;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (ReferenceEquals(_given, Given))
            return;
        _given = Given;
        _typed = Given?.Text ?? "";
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        // The hand is at the probes: the field of the next reading is ready to be typed into.
        if (firstRender && Last is not null)
            await _field.FocusAsync();
    }

    private string StepOf(BenchMeasure measure) => measure switch
    {
        BenchMeasure.Open => T["nothing plugged in"],
        BenchMeasure.Loaded => T["all loads plugged in and running"],
        _ => T["what the load draws, if wanted"],
    };

    /// <summary>A sign that was typed or read counts where no button says otherwise; where they contradict, nothing is taken.</summary>
    private async Task TakeAsync(string sign)
    {
        var typed = _typed.Trim();
        if (typed.Length == 0)
            return;
        var own = DisplayedValueReader.SignOf(typed);
        _contradicts = own is { } inField && sign.Length > 0 && sign[0] != inField;
        if (_contradicts)
            return;
        await OnTake.InvokeAsync(own is null ? sign + typed : typed);
        if (Problem is null)
            _typed = "";
    }
}
