using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;
using Loadmark.Files.Writing;

namespace Loadmark.Files.Editing;

/// <summary>
/// Changes a text where two rigs differ. Both come as trees in the program's own spelling, so a difference is one of meaning;
/// what they agree in keeps the spelling of the file. Whether the result is right is for the caller to check.
/// </summary>
internal sealed class TreeEdit
{
    private readonly SourceText _source;
    private readonly Splices _splices;
    private readonly NodeText _writer;
    private readonly ListedOutlets _listed;
    private readonly EditScope _scope;

    private TreeEdit(string text, MappingNode root, ListedOutlets listed, EditScope scope)
    {
        _source = new SourceText(text);
        _splices = new Splices(text);
        var isJson = root.IsFlow && root.Entries.Count > 0 && text[root.Entries[0].Key.Start.Index] == '"';
        _writer = new NodeText(isJson, text.Contains("{ ", StringComparison.Ordinal), _source.NewLine);
        _listed = listed;
        _scope = scope;
    }

    /// <summary>The changed text; null when it cannot be done in this scope.</summary>
    /// <param name="text">The text, without a byte order mark.</param>
    /// <param name="root">Its tree.</param>
    /// <param name="before">What it says.</param>
    /// <param name="after">What it is to say.</param>
    /// <param name="listed">The supplies with all of their outlets.</param>
    /// <param name="scope">How large the pieces are.</param>
    public static string? Apply(string text, MappingNode root, MappingNode before, MappingNode after, ListedOutlets listed, EditScope scope)
    {
        var edit = new TreeEdit(text, root, listed, scope);
        return edit.EditGroup(root, before, after, RigKeys.Rig) ? edit._splices.Apply() : null;
    }

    private bool EditGroup(MappingNode source, MappingNode before, MappingNode after, KeyTable table)
    {
        var wanted = new List<Wanted>(source.Entries.Count);
        for (var index = 0; index < source.Entries.Count; index++)
        {
            var key = source.Entries[index].Key.Value;
            var (old, value) = (before.Find(key), after.Find(key));
            if (old is not null && value is null)
                value = EmptyOf(Array.Find(table.Keys, one => one.Name == key)!);
            if (old is null || value is not null)
                wanted.Add(new Wanted(index, null, value, old));
        }

        var places = wanted.ConvertAll(one => Array.FindIndex(table.Keys, key => key.Name == source.Entries[one.Source].Key.Value));
        foreach (var (key, value) in after.Entries)
        {
            var order = Array.FindIndex(table.Keys, one => one.Name == key.Value);
            if (places.Contains(order))
                continue;
            var at = places.FindLastIndex(place => place < order) + 1;
            places.Insert(at, order);
            wanted.Insert(at, new Wanted(-1, key, value, null));
        }

        return EditAll(
            source,
            SiblingsOf(source),
            wanted,
            one => Array.Find(table.Keys, key => key.Name == source.Entries[one.Source].Key.Value),
            table == RigKeys.Rig && HasEmptyLines(source));
    }

    /// <summary>What a section becomes that has nothing in it any more, so that the comments in it may stay; null for other keys.</summary>
    private static Node? EmptyOf(Key key) => key.Form switch
    {
        ValueForm.NamedGroups or ValueForm.NamedTextsOrGroups => new MappingNode(Spot.Start, isFlow: true),
        ValueForm.List => new SequenceNode(Spot.Start, isFlow: true),
        _ => null,
    };

    private bool HasEmptyLines(MappingNode root)
    {
        for (var index = 1; index < root.Entries.Count; index++)
        {
            var start = _source.LineStart(root.Entries[index].Key.Start.Index);
            if (start > 1 && _source.Text.AsSpan(_source.LineStart(start - 1), start - _source.LineStart(start - 1)).IsWhiteSpace())
                return true;
        }

        return false;
    }

    /// <summary>Changes siblings within, then arranges them.</summary>
    private bool EditAll(Node parent, List<Sibling> siblings, List<Wanted> wanted, Func<Wanted, Key?> keyOf, bool isApart = false)
    {
        if (siblings.Exists(one => one.Start < 0))
            return false;
        var isFlow = parent is MappingNode { IsFlow: true } or SequenceNode { IsFlow: true };
        foreach (var one in wanted.Where(one => one.Source >= 0))
        {
            var sibling = siblings[one.Source];
            if (one.Key is not null && one.Key.Value != sibling.Key!.Value)
                _splices.Replace(sibling.Key.Start.Index, sibling.Key.EndIndex, _writer.Key(one.Key));
            if (one.Value is not null && !EditValue(sibling, one.Old, one.Value, keyOf(one), isFlow))
                return false;
        }

        return new SiblingEdit(_source, _splices, _writer, isFlow, parent.Start.Index + 1, siblings).Arrange(wanted, isApart);
    }

    private bool EditValue(Sibling sibling, Node? old, Node value, Key? key, bool isFlow)
    {
        if (old is not null && NodeText.Same(old, value))
            return true;
        var isWhole = _scope == EditScope.Sections || key is null || SourceText.IsMissing(sibling.Value);
        if (!isWhole && CanHold(sibling.Value, value, isFlow))
        {
            switch (key!.Form)
            {
                case ValueForm.NamedGroups or ValueForm.NamedTextsOrGroups when sibling.Value is MappingNode source:
                    return EditNamed(
                        source, old as MappingNode ?? new MappingNode(Spot.Start, isFlow: true), (MappingNode)value, key.Group!);
                case ValueForm.GroupList or ValueForm.List when sibling.Value is SequenceNode source:
                    return EditList(
                        sibling, source, old as SequenceNode ?? new SequenceNode(Spot.Start, isFlow: true), (SequenceNode)value, key);
            }
        }

        Replace(sibling, value, isFlow);
        return true;
    }

    /// <summary>Whether a value can go into the old one's brackets: not what takes several lines into empty ones of a block.</summary>
    private static bool CanHold(Node source, Node value, bool isFlow) =>
        isFlow || NodeText.IsInline(value)
            || source is not (MappingNode { IsFlow: true, Entries.Count: 0 } or SequenceNode { IsFlow: true, Items.Count: 0 });

    private bool EditNamed(MappingNode source, MappingNode before, MappingNode after, KeyTable table)
    {
        var isOutlets = table == OutletKeys.Table;
        var wanted = isOutlets ? OutletRuns.Match(source, before, after) : Matching.ByName(before, after);
        if (!isOutlets && source.Entries.Count != before.Entries.Count)
            return false;
        return EditEntries(source, SiblingsOf(source), wanted, table);
    }

    private bool EditList(Sibling whole, SequenceNode source, SequenceNode before, SequenceNode after, Key key)
    {
        if (source.Items.Count != before.Items.Count)
            return false;
        var keys = key.Group is null ? [] : key.Group.Keys.Where(one => one.IsRequired).Select(one => one.Name);
        if (!EditEntries(source, SiblingsOf(source), Matching.ByContent(before, after, keys), key.Group))
            return false;
        if (after.Items.Count > 0 || source.IsFlow || key.Form == ValueForm.List)
            return true;

        // Nothing wired is not the same as wiring left open.
        var colon = _source.ColonAfter(whole.Key!);
        if (colon >= 0)
            _splices.Insert(colon + 1, " []");
        return colon >= 0;
    }

    /// <summary>Changes loads, outlets, feeds and their like, each a group of keys, or words where there is no table.</summary>
    private bool EditEntries(Node parent, List<Sibling> siblings, List<Wanted> wanted, KeyTable? table)
    {
        for (var index = 0; index < wanted.Count && table is not null && _scope == EditScope.Keys; index++)
        {
            var one = wanted[index];
            if (one.Source < 0 || siblings[one.Source].Value is not MappingNode source || NodeText.Same(one.Old!, one.Value!))
                continue;
            if (table == SupplyKeys.Table && source.Find("outlets") is not null)
                one = WithOutlets(one, siblings[one.Source].Key!.Value);
            if (!EditGroup(source, AsGroup(one.Old!, table), AsGroup(one.Value!, table), table))
                return false;
            wanted[index] = one with { Value = null };
        }

        return EditAll(parent, siblings, wanted, _ => null);
    }

    private Wanted WithOutlets(Wanted one, string id) => one with { Old = _listed.Before(id), Value = _listed.After(one.Key?.Value ?? id) };

    /// <summary>A value as a group of keys: a text alone is that of the table's own key for it.</summary>
    private static MappingNode AsGroup(Node value, KeyTable table)
    {
        if (value is MappingNode group)
            return group;
        var made = new MappingNode(Spot.Start, isFlow: true);
        if (value is ScalarNode { Value.Length: > 0 })
            made.Entries.Add((new ScalarNode(Spot.Start, table.TextKey!, isPlain: true), value));
        return made;
    }

    private void Replace(Sibling sibling, Node value, bool isFlow)
    {
        var (start, end) = (sibling.Value.Start.Index, sibling.End);
        var afterKey = sibling.Key is null ? start : sibling.Key.EndIndex;
        var colon = sibling.Key is null ? -1 : _source.ColonAfter(sibling.Key);
        if (colon >= 0)
            afterKey = colon + 1;
        if (SourceText.IsMissing(sibling.Value))
            (start, end) = (afterKey, afterKey);
        var keyLineEnd = _source.LineEnd(afterKey);

        // What stands behind a text on its line stays, also where the text stands on a line below its key.
        var isBelow = !isFlow && sibling.Key is not null && start > keyLineEnd
            && !(sibling.Value is ScalarNode && NodeText.IsInline(value));
        if (isFlow || NodeText.IsInline(value))
        {
            var text = _writer.Inline(value);
            if (start == end)
                _splices.Insert(afterKey, sibling.Key is not null && colon < 0 ? $": {text}" : $" {text}");
            else if (isBelow)
                ReplaceBelow($" {text}", "");
            else
                _splices.Replace(start, end, text);
            return;
        }

        var block = _writer.Block(value, new string(' ', sibling.Start - _source.LineStart(sibling.Start) + 2));
        if (isBelow)
        {
            ReplaceBelow("", block);
            return;
        }

        _splices.Remove(afterKey, end);
        _splices.Insert(_source.LineEnd(end), block);

        void ReplaceBelow(string onKeyLine, string lines)
        {
            _splices.Insert(afterKey, onKeyLine);
            _splices.Replace(keyLineEnd, _source.LineEnd(end), lines);
        }
    }

    private List<Sibling> SiblingsOf(MappingNode parent) =>
        parent.Entries.ConvertAll(
            entry => new Sibling(entry.Key, entry.Value, entry.Key.Start.Index, _source.EndOf(entry.Key, entry.Value)));

    private List<Sibling> SiblingsOf(SequenceNode parent) =>
        parent.Items.ConvertAll(
            item => new Sibling(null, item, parent.IsFlow ? item.Start.Index : DashBefore(item), _source.EndOf(null, item)));

    /// <summary>Index of the dash before a list's item; -1 when it is not on the item's line.</summary>
    private int DashBefore(Node item)
    {
        var index = item.Start.Index - 1;
        while (index >= 0 && _source.Text[index] is ' ' or '\t')
            index--;
        return index >= 0 && _source.Text[index] == '-' && _source.IsFirstOnLine(index) ? index : -1;
    }
}
