using Spectre.Console;

namespace Loadmark.Terminal;

/// <summary>How a cell of a mark gauge shows; each is told apart without colour.</summary>
/// <param name="Sign">The sign, one cell wide.</param>
/// <param name="AsciiSign">The sign where only ASCII can be shown.</param>
/// <param name="Style">The cell's colour.</param>
internal sealed record GaugeLook(string Sign, string AsciiSign, Style Style)
{
    /// <summary>The look of a cell of the gauge.</summary>
    public static GaugeLook Of(GaugeCell cell) => cell switch
    {
        GaugeCell.Empty => new("·", ".", SheetStyle.Faint),
        GaugeCell.Run => new("█", "#", SheetStyle.Blue),
        GaugeCell.Start => new("▒", "=", SheetStyle.Blue),
        GaugeCell.Unknown => new("?", "?", SheetStyle.Plain),
        GaugeCell.Tick => new("╎", ":", SheetStyle.Plain),
        GaugeCell.Mark => new("┃", "|", SheetStyle.Strong),
        GaugeCell.RunPast => new("█", "#", SheetStyle.Orange),
        GaugeCell.StartPast => new("▒", "=", SheetStyle.Orange),
        _ => throw new ArgumentOutOfRangeException(nameof(cell), cell, "It has no look."),
    };
}
