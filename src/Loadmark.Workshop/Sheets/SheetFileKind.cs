namespace Loadmark.Workshop.Sheets;

/// <summary>The kinds of file that a sheet is written as.</summary>
public enum SheetFileKind
{
    /// <summary>Portable Document Format, ISO 32000-1: pages, text that is text, tagged.</summary>
    Pdf,

    /// <summary>Scalable Vector Graphics 1.1: the pages under one another.</summary>
    Svg,

    /// <summary>Portable Network Graphics: the pages under one another, in dots.</summary>
    Png,
}
