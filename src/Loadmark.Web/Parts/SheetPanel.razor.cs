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

    private static readonly (string Word, string About)[] Pages =
        [
            ("diagram", "Single-line diagram"),
            ("feeds", "Feed schedule, with boxes for what is measured"),
            ("leads", "Lead list"),
            ("findings", "Findings"),
            ("startup", "Switch-on"),
            ("player", "For the player"),
            ("labels", "Labels"),
        ];

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private string Address => $"rig/{View.Session.Kept!.Id}/sheet";

    private List<string> Missing =>
        [.. SheetBuilder.MissingCharacters(View.Rig).Take(MostMissing).Select(static one => SafeText.Clean(one.Character))];
}
