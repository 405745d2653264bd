using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;
using Origin = Loadmark.Core.Gear.Origin;

namespace Loadmark.Web.Parts;

/// <summary>
/// One figure with where it came from; leads to the field it can be changed in. By keyboard "More" leads there, so that a row is few stops
/// long.
/// </summary>
public sealed partial class FigureChip : ComponentBase
{
    /// <summary>The figure: "9 V". Not shown where nothing tells it: what goes with it then merely lets a computation go on.</summary>
    [Parameter, EditorRequired] public string What { get; set; } = "";

    /// <summary>Where the figure came from; null where nothing tells it.</summary>
    [Parameter] public Origin? Origin { get; set; }

    /// <summary>What is shown where nothing tells the figure: "polarity not known".</summary>
    [Parameter] public string? Unknown { get; set; }

    /// <summary>What the figure is, in a few words.</summary>
    [Parameter] public string? Title { get; set; }

    /// <summary>Told when the figure is to be changed.</summary>
    [Parameter] public EventCallback OnOpen { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private bool IsKnown => Origin is not (null or Core.Gear.Origin.Unknown);

    private string Class => IsKnown ? $"from-{Origin.ToString()!.ToLowerInvariant()}" : "from-nothing";
}
