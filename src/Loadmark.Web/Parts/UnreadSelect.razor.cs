using Loadmark.Core.Nameplates;
using Loadmark.Files.Entry;
using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>A piece of a label that was not read, and what it is.</summary>
public sealed partial class UnreadSelect : ComponentBase
{
    /// <summary>The label that it stands on: what cannot leave it is only told.</summary>
    [Parameter, EditorRequired] public Nameplate? Label { get; set; }

    /// <summary>The piece.</summary>
    [Parameter, EditorRequired] public string Piece { get; set; } = "";

    /// <summary>What it was said to be; null as long as nobody said.</summary>
    [Parameter] public UnreadMeaning? Meaning { get; set; }

    /// <summary>Whether the thing can have a kind.</summary>
    [Parameter] public bool HasKind { get; set; } = true;

    /// <summary>Told what it is; null where that is taken back.</summary>
    [Parameter] public EventCallback<UnreadMeaning?> OnChoose { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private Task ChooseAsync(ChangeEventArgs change) =>
        OnChoose.InvokeAsync(Enum.TryParse<UnreadMeaning>(change.Value as string, out var meaning) ? meaning : null);
}
