using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Sessions;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Two windows have edited this rig: what each changed, where they meet, and the ways to resolve it.</summary>
public sealed partial class MergeNotice : ComponentBase
{
    /// <summary>How many changes of a side are told one by one.</summary>
    private const int MostTold = 12;

    private string? _misfit;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    /// <summary>The two edits.</summary>
    [Parameter, EditorRequired] public EditConflict Conflict { get; set; } = null!;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private async Task MergeAsync() => _misfit = await View.Session.MergeAsync();
}
