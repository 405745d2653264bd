using Loadmark.Core.Display;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Files.Entry;
using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>What came of one line that was typed: what it is, its figures, and what is asked about it.</summary>
public sealed partial class EntryReading : ComponentBase
{
    private const int LongestShown = 60;

    /// <summary>What would be taken.</summary>
    [Parameter, EditorRequired] public EntryRow Row { get; set; } = null!;

    /// <summary>The same as it was typed, with no piece of its label put elsewhere.</summary>
    [Parameter, EditorRequired] public EntryRow Typed { get; set; } = null!;

    /// <summary>What pieces that were not read were said to be, by their text.</summary>
    [Parameter, EditorRequired] public IReadOnlyDictionary<string, UnreadMeaning> Meanings { get; set; } = null!;

    /// <summary>What is told where the row would take the place of another; null for the usual words.</summary>
    [Parameter] public string? Says { get; set; }

    /// <summary>Told what a piece is; null where that is taken back.</summary>
    [Parameter] public EventCallback<(string Piece, UnreadMeaning? Meaning)> OnSettle { get; set; }

    /// <summary>Told whether the outlets of a supply are isolated; null where that is not known.</summary>
    [Parameter] public EventCallback<(string Supply, bool? Isolated)> OnIsolate { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private string Tag =>
        Row.Load?.Id ?? Row.Supply?.Id ?? (Row.Outlets.Count == 1 ? Row.Outlets[0].Id : $"{Row.Outlets[0].Id}-{Row.Outlets[^1].Id}");

    private string? Name => Row.Load?.Name ?? Row.Supply?.Name;

    private IEnumerable<string> Unread => (Typed.Label?.Unread ?? []).Select(static unread => unread.Text).Distinct(StringComparer.Ordinal);

    private bool AsksIsolation => Typed.Supply is { Outlets.Count: > 1, IsolatedAsStated: null };

    /// <summary>What the line comes to, each figure with where it came from.</summary>
    private string Reads
    {
        get
        {
            if (Row.Load is { } load)
                return FigureWords.List(GearFigures.Of(load, LoadRating.Of(load), T), T);
            if (Row.Supply is { } supply)
                return T[supply.Outlets.Count == 1 ? "{0} outlet" : "{0} outlets", supply.Outlets.Count] + Each(supply);
            return Modes(Alone, Row.Outlets[0]);
        }
    }

    /// <summary>What each outlet gives, where no line of its own tells it.</summary>
    private string Each(Supply supply)
    {
        if (Row.Parts.Count > 0)
            return "";
        var names = supply.Outlets.Count > 1;
        return ": " + string.Join("; ", supply.Outlets.Items.Select(outlet => $"{(names ? outlet.Id + " " : "")}{Modes(supply, outlet)}"));
    }

    /// <summary>The outlets of one line are read by themselves, as if their supply had no label.</summary>
    private static Supply Alone { get; } = new() { Id = "", Outlets = [] };

    private static string Refused(EntryRefusal refusal) =>
        refusal.Expected is { } expected ? $"{refusal.Because} ({expected})" : refusal.Because;

    private static string Short(string text) => text.Length <= LongestShown ? text.Trim() : text[..LongestShown].Trim() + "…";

    private static string Modes(Supply supply, Outlet outlet) =>
        string.Join(
            " or ",
            OutletRating.Of(supply, outlet).Modes.Select(
                static mode => $"{FigureDisplay.Printed(mode.Volts)} {FigureDisplay.Printed(mode.Limit?.Value)}"));

    private Task IsolateAsync(ChangeEventArgs change) =>
        OnIsolate.InvokeAsync((Tag, bool.TryParse(change.Value as string, out var isolated) ? isolated : null));
}
