using Loadmark.Core.Nameplates;
using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;
using Origin = Loadmark.Core.Gear.Origin;

namespace Loadmark.Web.Parts;

/// <summary>
/// What of a thing's figures is not simply printed on it, in a few words: what is not known or was not read, and how much is assumed or
/// derived. Nothing where all is stated.
/// </summary>
public sealed partial class FigureMarks : ComponentBase
{
    /// <summary>The figures.</summary>
    [Parameter, EditorRequired] public IReadOnlyList<ShownFigure> Figures { get; set; } = [];

    /// <summary>The label that they were read from; null for none.</summary>
    [Parameter] public Nameplate? Label { get; set; }

    /// <summary>Told when all of them are to be seen.</summary>
    [Parameter] public EventCallback OnOpen { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private bool HasDoubt => Label is { Unread.Length: > 0 } or { Conflicts.Length: > 0 } || Figures.Any(static figure => !figure.IsKnown);

    private string Says => string.Join(", ", Parts().Where(static part => part.Length > 0));

    private string Whole =>
        string.Join(
            "; ",
            (Label?.Unread ?? []).Select(unread => T["not read: {0}", unread.Text].Value)
                .Prepend(FigureWords.List(Figures, T))
                .Concat(Label?.Conflicts ?? []));

    private IEnumerable<string> Parts()
    {
        var unknown = Figures.Where(static figure => !figure.IsKnown).ToList();
        yield return unknown.Count switch { 0 => "", 1 => unknown[0].Unknown ?? T["not known"], _ => T["{0} not known", unknown.Count] };
        yield return Label?.Unread.Length switch
        {
            null or 0 => "",
            1 => T["not read: {0}", Label.Unread[0].Text],
            var count => T["{0} pieces not read", count],
        };
        yield return Label?.Conflicts.Length > 0 ? T["figures disagree"] : "";
        yield return Count(Origin.Assumed) is > 0 and var assumed ? T["{0} assumed", assumed] : "";
        yield return Count(Origin.Derived) is > 0 and var derived ? T["{0} derived", derived] : "";
    }

    private int Count(Origin origin) => Figures.Count(figure => figure.Origin == origin);
}
