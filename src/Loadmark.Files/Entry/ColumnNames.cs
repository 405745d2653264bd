namespace Loadmark.Files.Entry;

/// <summary>The names under which people have columns: the keys of the rig file and other words for them.</summary>
/// <param name="words">Each key with its other names, in lower case.</param>
internal sealed class ColumnNames(params (string Key, string[] Names)[] words)
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
        words.SelectMany(word => word.Names.Append(word.Key.Replace('_', ' ')), (word, name) => (name, word.Key)).ToDictionary(pair => pair.name, pair => pair.Key, StringComparer.Ordinal);

    /// <summary>The names of loads' columns.</summary>
    public static ColumnNames OfLoads { get; } = new(
        ("tag", ["id", "asset", "asset tag", "asset no", "no", "nr"]),
        ("name", ["item", "device", "pedal", "description", "model"]),
        ("kind", ["type", "category", "sort"]),
        ("label", ["nameplate", "rating", "ratings", "rating plate", "printed", "as printed"]),
        ("voltage", []),
        ("current", ["draw", "current draw", "rated current", "consumption"]),
        ("watts", ["power"]),
        ("run", ["running", "running current", "measured", "measured current"]),
        ("start", ["starting", "starting current", "start current", "inrush"]),
        ("polarity", ["centre", "center"]),
        ("plug", ["jack", "connector", "plug size"]),
        ("ground", []),
        ("isolate", ["isolated"]),
        ("draws", []),
        ("starts_below", []),
        ("stops_below", []),
        ("input_capacitance", []),
        ("priority", []),
        (Words, ["keywords", "filed under"]));

    /// <summary>The names of supplies' columns: those of the supply, its outlets and its banks.</summary>
    public static ColumnNames OfSupplies { get; } = new(
        ("supply", ["id", "tag", "unit"]),
        ("name", ["item", "description", "model"]),
        ("label", ["nameplate", "rating", "printed"]),
        ("isolated", []),
        ("total", []),
        ("overload", []),
        ("regulated", []),
        ("mains", ["input"]),
        ("outlet", ["output", "no", "nr"]),
        ("outlet_label", ["output label"]),
        ("voltage", []),
        ("current", ["output current"]),
        ("watts", ["power"]),
        ("outlet_isolated", []),
        ("bank", []),
        ("polarity", ["centre", "center"]),
        ("plug", ["connector", "plug size"]),
        ("source_ohms", []),
        ("surge", []),
        ("no_load", []),
        ("bank_total", []),
        (Words, ["keywords", "filed under"]));

    /// <summary>The names of leads' columns.</summary>
    public static ColumnNames OfLeads { get; } = new(
        ("lead", ["id", "tag", "name"]),
        ("type", ["kind", "sort"]),
        ("length", []),
        ("tail", []),
        ("pitch", []),
        ("plugs", []),
        ("wire", ["conductor", "gauge"]),
        ("ohms", []),
        ("contact_ohms", []),
        ("plug", ["connector", "plug size"]),
        ("count", ["number", "quantity"]),
        (Words, ["keywords", "filed under"]));

    /// <summary>All keys.</summary>
    public IEnumerable<string> Keys => words.Select(word => word.Key);

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

    /// <summary>The words of a name: its runs of letters.</summary>
    private static List<string> WordsOf(string name) =>
        [.. string.Concat(name.ToLowerInvariant().Select(character => char.IsLetter(character) ? character : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries)];
}
