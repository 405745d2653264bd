namespace Loadmark.Files.Entry;

/// <summary>Reads what people type or paste to enter many things at once, one a line.</summary>
public static class LabelLines
{
    /// <summary>
    /// Reads lines. A load is <c>drive-3: 9V DC 12mA</c>; outlets are <c>1-4: 9 V 150 mA</c>; a supply is a line such as
    /// <c>brick: INPUT 100-240V~</c> with its outlets, indented or numbered, on the lines below. Where no id is typed, a free one
    /// is proposed. Loads pasted from a spreadsheet, with tabs, are read as a table (see <see cref="LoadTable"/>).
    /// Never throws on any text.
    /// </summary>
    /// <param name="text">The lines.</param>
    /// <param name="target">What they are read for.</param>
    /// <returns>A row for each line with text, or for a supply with its lines.</returns>
    public static EntryResult Read(string text, EntryTarget target)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(target);
        text = text.TrimStart('\uFEFF');
        if (target.Kind == EntryKind.Loads && text.Trim().Contains('\t', StringComparison.Ordinal))
            return LoadTable.Read(text, target);
        if (SourceLine.ProblemOf(text) is { } problem)
            return EntryResult.Failed(problem);
        var lines = SourceLine.Split(text);
        var rows = target.Kind switch
        {
            EntryKind.Outlets => new OutletLines(target.Existing).Read(lines),
            EntryKind.Supplies => new SupplyLines(target).Read(lines),
            _ => LoadLines.Read(lines, target),
        };
        return new EntryResult([.. rows], [], null);
    }
}
