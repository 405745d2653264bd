using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Parsing;

namespace Loadmark.Files.Entry;

/// <summary>Puts pieces of labels that were not read where their owner says that they belong; they leave the label then.</summary>
public static class UnreadPiece
{
    /// <summary>Whether the label tells the same figures without the piece, so that the piece can be taken for something else.</summary>
    /// <param name="label">The label; null for none.</param>
    /// <param name="piece">The piece, as the reading has it.</param>
    public static bool CanLeave(Nameplate? label, string piece) => label is not null && LabelTrim.WithoutUnread(label, piece) is not null;

    /// <summary>The load with a piece of its label put where it belongs; as it was where the piece cannot leave the label.</summary>
    /// <param name="load">The load.</param>
    /// <param name="piece">The piece, as the reading of the load's label has it.</param>
    /// <param name="meaning">What it is. A name or kind that is there already goes on before it.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Load Settle(Load load, string piece, UnreadMeaning meaning)
    {
        ArgumentNullException.ThrowIfNull(load);
        if (load.Label is null || LabelTrim.WithoutUnread(load.Label, piece) is not { } label)
            return load;
        return meaning switch
        {
            UnreadMeaning.Name => load with { Label = label, Name = After(load.Name, piece) },
            UnreadMeaning.Kind => load with { Label = label, Kind = new LoadKind(After(load.Kind?.Text, piece)) },
            _ => load with { Label = label },
        };
    }

    /// <summary>The supply with a piece of its label put where it belongs; as it was where the piece cannot leave the label.</summary>
    /// <param name="supply">The supply.</param>
    /// <param name="piece">The piece, as the reading of the supply's label has it.</param>
    /// <param name="meaning">What it is; a supply has no kind, and the piece stays where it is said to be one.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Supply Settle(Supply supply, string piece, UnreadMeaning meaning)
    {
        ArgumentNullException.ThrowIfNull(supply);
        if (meaning == UnreadMeaning.Kind || supply.Label is null || LabelTrim.WithoutUnread(supply.Label, piece) is not { } label)
            return supply;
        return supply with { Label = label, Name = meaning == UnreadMeaning.Name ? After(supply.Name, piece) : supply.Name };
    }

    /// <summary>
    /// What was entered, with pieces of its labels put where they belong. A name that may be a tag and that nothing else has becomes the
    /// tag where the tag was only proposed: people look for a thing under its name.
    /// </summary>
    /// <param name="read">What was entered.</param>
    /// <param name="target">What it was read for.</param>
    /// <param name="meanings">What the pieces are, by their text: what is printed on several things is settled for all of them.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static EntryResult Settle(EntryResult read, EntryTarget target, IReadOnlyDictionary<string, UnreadMeaning> meanings)
    {
        ArgumentNullException.ThrowIfNull(read);
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(meanings);
        if (meanings.Count == 0)
            return read;
        var entered = read.Rows.Select(static row => row.Load?.Id ?? row.Supply?.Id).OfType<string>();
        var taken = entered.Concat(target.Existing).ToHashSet(StringComparer.Ordinal);
        return read with { Rows = [.. read.Rows.Select(row => SettleRow(row, meanings, name => IsFreeTag(name, target, taken)))] };
    }

    private static EntryRow SettleRow(EntryRow row, IReadOnlyDictionary<string, UnreadMeaning> meanings, Func<string, bool> takes)
    {
        var (load, supply) = (row.Load, row.Supply);
        foreach (var piece in (row.Label?.Unread ?? []).Select(static unread => unread.Text).Distinct(StringComparer.Ordinal))
        {
            if (!meanings.TryGetValue(piece, out var meaning))
                continue;
            load = load is null ? null : Settle(load, piece, meaning);
            supply = supply is null ? null : Settle(supply, piece, meaning);
        }

        if (ReferenceEquals(load, row.Load) && ReferenceEquals(supply, row.Supply))
            return row;
        if (!row.IsIdProposed || (load?.Name ?? supply?.Name) is not { } name || !takes(name))
            return row with { Load = load, Supply = supply };
        return row with
        {
            Load = load is null ? null : load with { Id = name, Name = null },
            Supply = supply is null ? null : supply with { Id = name, Name = null },
            IsIdProposed = false,
        };
    }

    private static bool IsFreeTag(string name, EntryTarget target, HashSet<string> taken) =>
        Ids.Problem(name, mayHaveSlash: target.Kind == EntryKind.Loads) is null
        && !target.Elsewhere.Contains(GearTag.KeyOf(name))
        && taken.Add(name);

    private static string After(string? present, string piece) => present is null ? piece : $"{present} {piece}";
}
