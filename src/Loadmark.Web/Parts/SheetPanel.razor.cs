using Loadmark.Drawing.Texts;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Sheets;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Chooses what sheet is made of the rig.</summary>
public sealed partial class SheetPanel : ComponentBase
{
    private const int MostMissing = 40;

    private static readonly string CommonLabel = $"{LabelSize.Common.WidthMm}x{LabelSize.Common.HeightMm}";

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private (string Word, string About)[] Pages =>
        [
            ("diagram", T["Single-line diagram"]),
            ("feeds", T["Feed schedule, with boxes for what is measured"]),
            ("leads", T["Lead list"]),
            ("shopping", T["Shopping list"]),
            ("findings", T["Findings"]),
            ("startup", T["Switch-on"]),
            ("player", T["For the player"]),
            ("labels", T["Labels"]),
            ("codes", T["The rig file as codes, to restore it from paper"]),
        ];

    /// <summary>The shopping list is on the sheet from the beginning only where the rig has something to buy; all else is.</summary>
    private bool IsChosen(string word) => word != "shopping" || View.Rig.ToBuy.Any();

    private string Address => $"rig/{View.Session.Kept!.Id}/paper";

    private List<string> Missing =>
        [.. SheetBuilder.MissingCharacters(View.Rig).Take(MostMissing).Select(static one => SafeText.Clean(one.Character))];
}
