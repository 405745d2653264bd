using Loadmark.Web.Views;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Loadmark.Web.Tests;

/// <summary>Stands in for the page of a rig: draws a part anew whenever the rig, or what is shown of it, has changed.</summary>
public sealed class PartHost : ComponentBase
{
    /// <summary>The rig's page.</summary>
    [Parameter] public RigView View { get; set; } = null!;

    /// <summary>Draws the part.</summary>
    [Parameter] public Func<RenderFragment> Part { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        View.Session.Changed += (_, _) => _ = InvokeAsync(() =>
        {
            View.Follow();
            StateHasChanged();
        });
        View.Changed += (_, _) => _ = InvokeAsync(StateHasChanged);
    }

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder) => builder.AddContent(0, Part());
}
