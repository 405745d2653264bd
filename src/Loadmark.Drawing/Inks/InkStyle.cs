using System.Collections.Immutable;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Inks;

/// <summary>How an ink is laid on.</summary>
/// <param name="Fill">The tone of faces and text.</param>
/// <param name="Stroke">The tone of lines and edges.</param>
/// <param name="Width">The width of lines in px.</param>
/// <param name="Dashes">The dashes in px; empty for an unbroken line.</param>
internal readonly record struct InkStyle(Tone Fill, Tone Stroke, double Width = 1, string Dashes = "")
{
    /// <summary>The dashes of the variants of a plot's line: no two alike, so that colour is not needed to tell them apart.</summary>
    public static ImmutableArray<string> SeriesDashes { get; } = ["", "7 3", "2 2.5", "9 3 2 3", "12 4", "5 2 1 2 1 2"];

    /// <summary>The style of an ink.</summary>
    public static InkStyle Of(Ink ink) => ink switch
    {
        Ink.Halo => new(Tone.None, Tone.Paper, 5),
        Ink.Outline => new(Tone.Face, Tone.Edge),
        Ink.HarmFrame => new(Tone.None, Tone.Harm, 3),
        Ink.Hair => new(Tone.None, Tone.Hair),
        Ink.Fill => new(Tone.Face, Tone.None),
        Ink.MainsLine => new(Tone.Paper, Tone.Strong, 1.6),
        Ink.ReturnRail => new(Tone.Edge, Tone.Edge, 2.4),
        Ink.GaugeVessel => new(Tone.Paper, Tone.Edge, 1.2),
        Ink.GaugeOpen => new(Tone.Paper, Tone.Edge, 1.2, "2 2"),
        Ink.GaugeRun => new(Tone.Run, Tone.None),
        Ink.GaugeReading => new(Tone.Reading, Tone.None),
        Ink.GaugeOver => new(Tone.Over, Tone.None),
        Ink.GaugeStart => new(Tone.None, Tone.Strong, 1.4, "3 1.6"),
        Ink.GaugeStartOver => new(Tone.None, Tone.Over, 2.4, "4 1.8"),
        Ink.GaugeLimit => new(Tone.Strong, Tone.Strong, 1.8),
        Ink.GaugeHeadroom => new(Tone.None, Tone.Edge, 1.2),
        Ink.LeadLine => new(Tone.None, Tone.Strong, 1.4),
        Ink.LeadSpecial => new(Tone.Paper, Tone.Strong, 1.2),
        Ink.LeadPlug => new(Tone.Strong, Tone.None),
        Ink.Text or Ink.TextStrong or Ink.TextFigure => new(Tone.Strong, Tone.None),
        Ink.TextQuiet => new(Tone.Quiet, Tone.None),
        Ink.TextReading => new(Tone.Reading, Tone.None),
        Ink.SignHarm => new(Tone.Harm, Tone.Harm, 2.6),
        Ink.SignFails => new(Tone.Fails, Tone.Fails),
        Ink.SignOpen => new(Tone.None, Tone.Note, 1.5),
        Ink.SignUnsure => new(Tone.Unsure, Tone.Unsure, 1.7),
        Ink.SignNoise => new(Tone.Noise, Tone.Noise, 1.7),
        Ink.SignMargin => new(Tone.Margin, Tone.Margin, 1.5),
        Ink.SignNote => new(Tone.Note, Tone.None),
        Ink.SignGood => new(Tone.Good, Tone.Good, 1.8),
        Ink.SeriesLine => new(Tone.None, Tone.Series0, 1.8),
        Ink.SeriesPoint => new(Tone.Series0, Tone.Paper),
        Ink.SeriesText => new(Tone.Series0, Tone.None),
        Ink.Band => new(Tone.Series0, Tone.None),
        Ink.Grid => new(Tone.None, Tone.Hair, 0.7),
        Ink.Axis => new(Tone.None, Tone.Edge),
        Ink.Mark => new(Tone.None, Tone.Strong, 1.2, "6 3"),
        Ink.Cursor => new(Tone.Strong, Tone.Strong),
        Ink.CodeModule => new(Tone.Strong, Tone.None),
        _ => throw new ArgumentOutOfRangeException(nameof(ink), ink, "It has no style."),
    };
}
