using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;

namespace Loadmark.Web.Parts;

/// <summary>The figures of a thing, each with where it came from, and what of its label was not read.</summary>
public sealed partial class FigureChips : ComponentBase
{
    /// <summary>What they are of, for who hears the page: "Figures of drive-3".</summary>
    [Parameter, EditorRequired] public string Label { get; set; } = "";

    /// <summary>The figures.</summary>
    [Parameter, EditorRequired] public IReadOnlyList<ShownFigure> Figures { get; set; } = [];

    /// <summary>What the thing is called besides its tag; null when nothing.</summary>
    [Parameter] public string? Name { get; set; }

    /// <summary>What stands after them.</summary>
    [Parameter] public RenderFragment? ChildContent { get; set; }

    /// <summary>Told when a figure is to be changed.</summary>
    [Parameter] public EventCallback OnOpen { get; set; }
}
