using Loadmark.Files.Entry;
using Loadmark.Web.Texts;
using Loadmark.Workshop.TypedInput;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Lines to type labels in, and beside each what it comes to.</summary>
public sealed partial class EntrySheet : ComponentBase
{
    private const int MostShown = 60;
    private const int FewestRows = 4;

    private List<EntryLine> _lines = [];

    /// <summary>The field's name in the document.</summary>
    [Parameter, EditorRequired] public string Id { get; set; } = "";

    /// <summary>What the lines come to.</summary>
    [Parameter, EditorRequired] public EntryDraft Draft { get; set; } = null!;

    /// <summary>What an empty field shows.</summary>
    [Parameter, EditorRequired] public string Example { get; set; } = "";

    /// <summary>What the browser keeps unfinished lines under; null where it keeps none.</summary>
    [Parameter] public string? DraftKey { get; set; }

    /// <summary>What is told about a row that would take the place of another; null for the usual words.</summary>
    [Parameter] public string? Says { get; set; }

    /// <summary>Told the lines when they change; has the draft read them.</summary>
    [Parameter] public EventCallback<string> OnTyped { get; set; }

    /// <summary>Told when something was answered about a line.</summary>
    [Parameter] public EventCallback OnAnswered { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <summary>As many lines as stand there and one more, so that no line scrolls away from what it comes to.</summary>
    private int Rows => Math.Clamp(Draft.Text.AsSpan().Count('\n') + 2, FewestRows, MostShown);

    /// <inheritdoc/>
    /// <remarks>Told anew by whoever has the draft after each line and each answer.</remarks>
    protected override void OnParametersSet() => _lines = Draft.Lines(MostShown);

    private Task Settle((string Piece, UnreadMeaning? Meaning) answer)
    {
        Draft.Settle(answer.Piece, answer.Meaning);
        return OnAnswered.InvokeAsync();
    }

    private Task Isolate((string Supply, bool? Isolated) answer)
    {
        Draft.Isolate(answer.Supply, answer.Isolated);
        return OnAnswered.InvokeAsync();
    }
}
