using Spectre.Console;

namespace Loadmark.Sheets;

/// <summary>How a cell of a mark gauge shows; each is told apart without colour.</summary>
/// <param name="Sign">The sign, one cell wide.</param>
/// <param name="AsciiSign">The sign where only ASCII can be shown.</param>
/// <param name="Style">Its colour.</param>
internal sealed record GaugeLook(string Sign, string AsciiSign, Style Style)
{
    /// <summary>How <paramref name="cell"/> shows.</summary>
    public static GaugeLook Of(GaugeCell cell) => cell switch
    {
        GaugeCell.Empty => new("·", ".", Ink.Faint),
        GaugeCell.Run => new("█", "#", Ink.Blue),
        GaugeCell.Start => new("▒", "=", Ink.Blue),
        GaugeCell.Unknown => new("?", "?", Ink.Plain),
        GaugeCell.Tick => new("╎", ":", Ink.Plain),
        GaugeCell.Mark => new("┃", "|", Ink.Strong),
        GaugeCell.RunPast => new("█", "#", Ink.Orange),
        GaugeCell.StartPast => new("▒", "=", Ink.Orange),
        _ => throw new ArgumentOutOfRangeException(nameof(cell), cell, "It has no look."),
    };
}
