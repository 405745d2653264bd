using Loadmark.Files.Keys;

namespace Loadmark.Files.Entry;

/// <summary>The names under which people have columns: the fields of the rig file and other words for them.</summary>
/// <param name="words">Each column with its other names, in lower case.</param>
internal sealed class ColumnNames((string Key, IReadOnlyList<string> Names)[] words)
{
    private static readonly Dictionary<string, string> Units = new(StringComparer.Ordinal)
    {
        ["v"] = "V",
        ["volt"] = "V",
        ["volts"] = "V",
        ["vdc"] = "V",
        ["ma"] = "mA",
        ["milliamp"] = "mA",
        ["milliamps"] = "mA",
        ["a"] = "A",
        ["amp"] = "A",
        ["amps"] = "A",
        ["ampere"] = "A",
        ["amperes"] = "A",
        ["w"] = "W",
        ["watt"] = "W",
        ["watts"] = "W",
    };

    /// <summary>The column of the words that a piece of gear is filed under, which only a library has.</summary>
    public const string Words = "words";

    private readonly Dictionary<string, string> _keys =
        words.SelectMany(word => word.Names.Append(word.Key.Replace('_', ' ')), (word, name) => (name, word.Key))
            .ToDictionary(pair => pair.name, pair => pair.Key, StringComparer.Ordinal);

    /// <summary>The names of loads' columns.</summary>
    public static ColumnNames OfLoads { get; } = new(
        [("tag", ["id", "asset", "asset tag", "asset no", "no", "nr"]), .. Of(LoadKeys.Table), OfWords]);

    /// <summary>
    /// The names of supplies' columns: of the supply, its outlets and its banks. An outlet's label may be there in parts.
    /// </summary>
    public static ColumnNames OfSupplies { get; } = new(
    [
        ("supply", ["id", "tag", "unit"]), .. Of(SupplyKeys.Table),
        ("outlet", ["output", "no", "nr"]), .. Of(OutletKeys.Table).Take(1),
        ("voltage", []), ("current", ["output current"]), ("watts", ["power"]), .. Of(OutletKeys.Table).Skip(1),
        ("bank_total", []), OfWords,
    ]);

    /// <summary>The names of leads' columns.</summary>
    public static ColumnNames OfLeads { get; } = new([("lead", ["id", "tag", "name"]), .. Of(LeadKeys.Table), OfWords]);

    /// <summary>The keys that columns may stand for, all of them.</summary>
    public IEnumerable<string> Keys => words.Select(word => word.Key);

    private static (string Key, IReadOnlyList<string> Names) OfWords => (Words, ["keywords", "filed under"]);

    /// <summary>What a name in the first row says; null when it is none of these.</summary>
    public (string Key, string? Unit)? Find(string name)
    {
        var parts = WordsOf(name);
        if (_keys.TryGetValue(string.Join(' ', parts), out var key))
            return (key, key == "watts" ? "W" : null);
        var unit = parts.Select(part => Units.GetValueOrDefault(part)).FirstOrDefault(found => found is not null);
        if (unit is null)
            return null;
        var rest = string.Join(' ', parts.Where(part => !Units.ContainsKey(part)));
        if (rest.Length > 0)
            return _keys.TryGetValue(rest, out key) ? (key, unit) : null;
        return (unit == "V" ? "voltage" : unit == "W" ? "watts" : "current", unit);
    }

    private static IEnumerable<(string Key, IReadOnlyList<string> Names)> Of<T>(FieldTable<T> table) =>
        table.Fields.Select(static field => (field.Column, field.ColumnNames));

    /// <summary>The words of a name: its runs of letters.</summary>
    private static List<string> WordsOf(string name) =>
        [.. string.Concat(name.ToLowerInvariant().Select(character => char.IsLetter(character) ? character : ' '))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)];
}
