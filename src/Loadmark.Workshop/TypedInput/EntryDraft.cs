using System.Collections.Immutable;
using Loadmark.Files.Entry;

namespace Loadmark.Workshop.TypedInput;

/// <summary>
/// Lines of labels that are being typed, what each comes to, and what was answered about pieces of them. Nothing is taken before it is
/// asked for, and what cannot be taken stays.
/// </summary>
public sealed class EntryDraft
{
    // What is printed on several things is asked once: the answers go by the text of the piece.
    private readonly Dictionary<string, UnreadMeaning> _meanings = new(StringComparer.Ordinal);
    private readonly Dictionary<string, bool> _isolated = new(StringComparer.Ordinal);
    private EntryTarget _target = new(EntryKind.Loads, []);
    private bool _isTable;

    /// <summary>The lines as they were typed.</summary>
    public string Text { get; private set; } = "";

    /// <summary>How they read; null where there are none.</summary>
    public EntryResult? Reading { get; private set; }

    /// <summary>What would be taken, row by row of the reading, with what was answered.</summary>
    public ImmutableArray<EntryRow> Rows { get; private set; } = [];

    /// <summary>What pieces that were not read were said to be, by their text.</summary>
    public IReadOnlyDictionary<string, UnreadMeaning> Meanings => _meanings;

    /// <summary>How many rows would be taken.</summary>
    public int Takes => Rows.Count(static row => row.Refusal is null);

    /// <summary>How many rows are refused.</summary>
    public int Refuses => Rows.Count(static row => row.Refusal is not null);

    /// <summary>The last line that something stands on, from 1; 0 for none.</summary>
    public int LastLine =>
        Rows.SelectMany(static row => row.Parts.Items.Select(static part => part.Line).Append(row.Line)).DefaultIfEmpty().Max();

    /// <summary>Takes other lines.</summary>
    /// <param name="text">The lines; a table where they hold tabs and are loads.</param>
    /// <param name="target">What they are read for.</param>
    public void Type(string text, EntryTarget target) => Read(text, target, isTable: false);

    /// <summary>Takes a table of loads instead of lines.</summary>
    /// <param name="text">The table.</param>
    /// <param name="target">What it is read for.</param>
    public void Open(string text, EntryTarget target) => Read(text, target, isTable: true);

    /// <summary>Reads the same lines for another target, such as the rig after an edit.</summary>
    /// <param name="target">What they are read for.</param>
    public void ReadAgain(EntryTarget target) => Read(Text, target, _isTable);

    /// <summary>Leaves only the lines that were not taken.</summary>
    /// <param name="wasTaken">Whether a row was; none that is refused is asked about.</param>
    /// <param name="target">What the rest is read for.</param>
    public void Leave(Func<EntryRow, bool> wasTaken, EntryTarget target)
    {
        var rest = Rows.Zip(Reading?.Rows ?? []).Where(both => both.First.Refusal is not null || !wasTaken(both.First));
        Type(string.Join('\n', rest.Select(static both => both.Second.Text)), target);
    }

    /// <summary>Says what a piece that was not read is.</summary>
    /// <param name="piece">The piece, as a label's reading has it.</param>
    /// <param name="meaning">What it is; null takes that back.</param>
    public void Settle(string piece, UnreadMeaning? meaning)
    {
        if (meaning is { } known)
            _meanings[piece] = known;
        else
            _meanings.Remove(piece);
        Answer();
    }

    /// <summary>Says whether a supply's outlets are isolated from one another.</summary>
    /// <param name="supply">The supply's tag.</param>
    /// <param name="isolated">Whether they are; null takes that back.</param>
    public void Isolate(string supply, bool? isolated)
    {
        if (isolated is { } known)
            _isolated[supply] = known;
        else
            _isolated.Remove(supply);
        Answer();
    }

    /// <summary>The lines from the first on, each with what it comes to.</summary>
    /// <param name="most">How many at most.</param>
    public List<EntryLine> Lines(int most)
    {
        var read = new Dictionary<int, EntryLine>();
        foreach (var (row, typed) in Rows.Zip(Reading?.Rows ?? []))
        {
            read[typed.Line] = new EntryLine(typed.Line, row, typed);
            foreach (var part in typed.Parts)
                read[part.Line] = new EntryLine(part.Line, part, part);
        }

        var shown = Enumerable.Range(1, Math.Min(LastLine, most));
        return [.. shown.Select(line => read.GetValueOrDefault(line) ?? new EntryLine(line, null, null))];
    }

    private void Read(string text, EntryTarget target, bool isTable)
    {
        (Text, _target, _isTable) = (text, target, isTable);
        Reading = string.IsNullOrWhiteSpace(text) ? null : isTable ? LoadTable.Read(text, target) : LabelLines.Read(text, target);
        Answer();
    }

    private void Answer() => Rows = Reading is null ? [] : [.. UnreadPiece.Settle(Reading, _target, _meanings).Rows.Select(Isolated)];

    private EntryRow Isolated(EntryRow row) =>
        row.Supply is { Isolated: null } supply && _isolated.TryGetValue(supply.Id, out var isolated)
            ? row with { Supply = supply with { Isolated = isolated } }
            : row;
}
