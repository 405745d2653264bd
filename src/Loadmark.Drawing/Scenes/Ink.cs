namespace Loadmark.Drawing.Scenes;

/// <summary>What a shape is for. Never a colour: the page has classes for them, paper has styles.</summary>
public enum Ink
{
    /// <summary>The ground, as a line that lets the line beneath stop short of it.</summary>
    Halo,

    /// <summary>The edge of a thing.</summary>
    Outline,

    /// <summary>A frame around a thing at which harm arises.</summary>
    HarmFrame,

    /// <summary>A thin line that only orders the picture.</summary>
    Hair,

    /// <summary>The face of a thing.</summary>
    Fill,

    /// <summary>The mains' line.</summary>
    MainsLine,

    /// <summary>A return that outlets share.</summary>
    ReturnRail,

    /// <summary>The walls of a gauge.</summary>
    GaugeVessel,

    /// <summary>The walls of a gauge whose draw or limit is not known.</summary>
    GaugeOpen,

    /// <summary>The running draw.</summary>
    GaugeRun,

    /// <summary>What runs past the limit.</summary>
    GaugeOver,

    /// <summary>The starting draw: a dashed line.</summary>
    GaugeStart,

    /// <summary>A starting draw past the limit: a dashed line.</summary>
    GaugeStartOver,

    /// <summary>The mark at the limit.</summary>
    GaugeLimit,

    /// <summary>The tick where the headroom begins.</summary>
    GaugeHeadroom,

    /// <summary>A draw that was read or computed, in place of the running draw.</summary>
    GaugeReading,

    /// <summary>The line of a lead.</summary>
    LeadLine,

    /// <summary>What sets a lead apart: a reversal, a joint, a plug.</summary>
    LeadSpecial,

    /// <summary>A plug of a lead.</summary>
    LeadPlug,

    /// <summary>Plain text, in the common colour of text.</summary>
    Text,

    /// <summary>Text that steps back behind plain text.</summary>
    TextQuiet,

    /// <summary>Tags and headings, bold.</summary>
    TextStrong,

    /// <summary>Figures, in digits of one width.</summary>
    TextFigure,

    /// <summary>A figure that was read or computed.</summary>
    TextReading,

    /// <summary>Sign and word of harm.</summary>
    SignHarm,

    /// <summary>Sign and word of fails.</summary>
    SignFails,

    /// <summary>Sign and word of open: nothing is plugged in yet.</summary>
    SignOpen,

    /// <summary>Sign and word of unsure.</summary>
    SignUnsure,

    /// <summary>Sign and word of noise.</summary>
    SignNoise,

    /// <summary>Sign and word of margin.</summary>
    SignMargin,

    /// <summary>Sign and word of note.</summary>
    SignNote,

    /// <summary>Sign and word of good.</summary>
    SignGood,

    /// <summary>A line of a plot; its variant gives colour and dashes.</summary>
    SeriesLine,

    /// <summary>A point of a plot.</summary>
    SeriesPoint,

    /// <summary>The label of a line of a plot.</summary>
    SeriesText,

    /// <summary>The spread around a line of a plot.</summary>
    Band,

    /// <summary>The grid of a plot.</summary>
    Grid,

    /// <summary>The axes of a plot.</summary>
    Axis,

    /// <summary>A level of a plot that is not to be passed, or where something happens.</summary>
    Mark,

    /// <summary>The cursor of a plot.</summary>
    Cursor,

    /// <summary>The dark modules of a code, for cameras rather than for eyes.</summary>
    CodeModule,
}
