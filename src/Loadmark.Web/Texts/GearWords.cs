using Loadmark.Core.Gear;
using Loadmark.Files.Forms;
using Loadmark.Files.Library;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Texts;

/// <summary>Gear of the library in words.</summary>
internal static class GearWords
{
    /// <summary>"load", "supply", "lead".</summary>
    public static string Of(GearKind kind, IStringLocalizer<PageText> T) => kind switch
    {
        GearKind.Load => T["a load"],
        GearKind.Supply => T["a supply"],
        _ => T["a lead"],
    };

    /// <summary>"Rated current: 300 mA, was 250 mA".</summary>
    public static string Of(GearDifference difference, IStringLocalizer<PageText> T)
    {
        var name = NameOf(difference.Key, T);
        return difference switch
        {
            { Before: null, After: { } after } => T["{0}: {1}, nothing was said before", name, after],
            { Before: { } before, After: null } => T["{0}: nothing, was {1}", name, before],
            _ => T["{0}: {1}, was {2}", name, difference.After!, difference.Before!],
        };
    }

    /// <summary>Differences one after the other.</summary>
    public static string Of(IEnumerable<GearDifference> differences, IStringLocalizer<PageText> T) =>
        string.Join("; ", differences.Select(difference => Of(difference, T)));

    /// <summary>The words that a text names, parted by commas.</summary>
    public static IEnumerable<string> WordsIn(string typed) =>
        typed.Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Distinct(StringComparer.OrdinalIgnoreCase);

    private static string NameOf(string key, IStringLocalizer<PageText> T) => key switch
    {
        "words" => T["Filed under"],
        "tag" => T["Tag"],
        _ when key.StartsWith("outlet ", StringComparison.Ordinal) => T["outlet {0}", key["outlet ".Length..]],
        _ when key.StartsWith("bank ", StringComparison.Ordinal) => T["outlets of {0} together", key["bank ".Length..]],
        _ => T[GearForm.TitleOf(key)],
    };
}
