namespace Loadmark.Drawing.Paper;

/// <summary>What a part of a page is to who has it read aloud: the standard structure types of ISO 32000-1, 14.8.4.</summary>
public enum PaperTag
{
    /// <summary>Rules, running heads and page numbers: left out when read aloud.</summary>
    Artifact,

    /// <summary>The title of the whole sheet.</summary>
    Title,

    /// <summary>A heading of a page.</summary>
    Heading,

    /// <summary>A heading within a page.</summary>
    Subheading,

    /// <summary>Running text.</summary>
    Paragraph,

    /// <summary>A picture; its words stand in <see cref="PaperPart.Alternative"/>.</summary>
    Figure,

    /// <summary>A table; its parts are rows.</summary>
    Table,

    /// <summary>A row of a table; its parts are cells.</summary>
    Row,

    /// <summary>A cell that says what its column or row is.</summary>
    HeaderCell,

    /// <summary>A cell of a table.</summary>
    Cell,
}
