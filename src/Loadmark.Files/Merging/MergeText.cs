using System.Globalization;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Merging;

/// <summary>Values of a rig as a rig file writes them.</summary>
internal static class MergeText
{
    /// <summary>The text of a value; null for none.</summary>
    public static string? Of(object? value) => value switch
    {
        null => null,
        string text => text,
        bool yes => yes ? "yes" : "no",
        int number => number.ToString(CultureInfo.InvariantCulture),
        decimal share => string.Create(CultureInfo.InvariantCulture, $"{share * 100:0.####} %"),
        Polarity polarity => PolarityText.Of(polarity),
        OverloadWay.CurrentLimit => "current limit",
        LeadType.DaisyChain => "daisy chain",
        Enum word => word.ToString().ToLowerInvariant(),
        ValueList<string> { Count: 0 } or ValueList<Volts> { Count: 0 } => null,
        Feed feed => $"{string.Join(" + ", feed.From)} to {feed.To}",
        Load load => Whole(load.Name, load.Label?.Text),
        Supply supply => Whole(
            supply.Name, supply.Label?.Text ?? string.Join("; ", supply.Outlets.Items.Select(static outlet => outlet.Label.Text))),
        Outlet outlet => outlet.Label.Text.Length == 0 ? "there" : outlet.Label.Text,
        Bank bank => bank.Total.ToString(),
        Lead lead => $"{Of(lead.Type)}{(lead.Length is { } length ? $" {length}" : "")}",
        _ => value.ToString(),
    };

    private static string Whole(string? name, string? label) =>
        string.Join(", ", ((string?[])[name, label]).Where(static text => !string.IsNullOrEmpty(text))) is { Length: > 0 } text
            ? text
            : "there";
}
