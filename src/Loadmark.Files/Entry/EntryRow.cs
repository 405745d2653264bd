using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Entry;

/// <summary>What came of one line, or of the lines of one supply. Exactly one of load, supply, outlets and refusal is there.</summary>
public sealed record EntryRow
{
    /// <summary>The line in the text, from 1; of several, the first.</summary>
    public required int Line { get; init; }

    /// <summary>The line, or lines, as they were typed.</summary>
    public required string Text { get; init; }

    /// <summary>The load; null when it is none.</summary>
    public Load? Load { get; init; }

    /// <summary>The supply that the line is, with its outlets; null when the line is none.</summary>
    public Supply? Supply { get; init; }

    /// <summary>The outlets, several of a range; empty when it is none.</summary>
    public ValueList<Outlet> Outlets { get; init; }

    /// <summary>The lines of a supply's outlets, each a row of its own that belongs to this one; empty where it has none.</summary>
    public ValueList<EntryRow> Parts { get; init; }

    /// <summary>The words that a library files it under, as typed; null when there are none. A rig has no place for them.</summary>
    public string? Words { get; init; }

    /// <summary>Whether the id is the program's proposal, since none was typed.</summary>
    public bool IsIdProposed { get; init; }

    /// <summary>The ids that are there already and would be replaced.</summary>
    public ValueList<string> Replaces { get; init; }

    /// <summary>Why the row is not taken; null when it is.</summary>
    public EntryRefusal? Refusal { get; init; }

    /// <summary>
    /// The reading of its label: which figures are stated, which derived, and what was not read. Null when there is no label.
    /// </summary>
    public Nameplate? Label =>
        Load is not null ? Load.Label : Supply is not null ? Supply.Label : Outlets.Count > 0 ? Outlets[0].Label : null;
}
