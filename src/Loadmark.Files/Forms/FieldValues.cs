using System.Text;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Forms;

/// <summary>
/// Takes what is typed field by field through the nodes of a rig file and back, so that it is read, refused and written exactly as it is in
/// a file.
/// </summary>
internal static class FieldValues
{
    /// <summary>The place of what nobody typed: on no line.</summary>
    private static readonly Spot Nowhere = new(0, 1, 0);

    /// <summary>The fields of a table of keys.</summary>
    public static IReadOnlyList<FormField> Fields<T>(FieldTable<T> table) =>
    [
        .. table.Fields.Select(static field => new FormField(
            field.Name, field.Title, field.Description,
            [.. field.Words.Where(static word => !word.StartsWith("center", StringComparison.Ordinal))],
            field.Examples, field.Form == ValueForm.YesNo)),
    ];

    /// <summary>What is said of a thing, by key.</summary>
    public static IReadOnlyDictionary<string, string> Of<T>(T thing, FieldTable<T> table)
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var field in table.Fields)
        {
            if (field.TextOf(thing) is { } text)
                values.Add(field.Name, text);
        }

        return values;
    }

    /// <summary>Reads a thing of typed values.</summary>
    /// <param name="values">The values by key; empty ones are left out.</param>
    /// <param name="table">The keys there are.</param>
    /// <param name="read">Reads the thing from the group of its keys; null where that cannot be done.</param>
    public static FormResult<T> Read<T>(IReadOnlyDictionary<string, string> values, KeyTable table, Func<MappingNode, ErrorList, T?> read)
        where T : class
    {
        var group = new MappingNode(Nowhere, isFlow: true);
        var keys = new List<string>();
        foreach (var (key, typed) in values)
        {
            if (string.IsNullOrWhiteSpace(typed) || !table.Has(key))
                continue;
            keys.Add(key);
            var place = new Spot(keys.Count, 1, 0); // each field is a line of its own, so that the place of a fault tells the field
            var text = key == "label" ? typed : typed.Trim(); // a label is kept as it stands
            group.Entries.Add((new ScalarNode(place, key, isPlain: true), new ScalarNode(place, Whole(text), isPlain: false)));
        }

        var errors = new ErrorList("form");
        if (values.Values.Sum(static typed => (long)typed.Length) > RigFileReader.MostBytes)
            errors.Add(Nowhere, RigFile.TooLarge());
        var thing = errors.Any ? null : read(group, errors);
        var faults = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var error in errors.ToArray())
            faults.TryAdd(error.Line > 0 ? keys[error.Line - 1] : "", error.Message);
        return new FormResult<T>(errors.Any ? null : thing, faults);
    }

    /// <summary>A key, or an id, that nobody typed into a field.</summary>
    public static ScalarNode Node(string text) => new(Nowhere, Whole(text), isPlain: false);

    /// <summary>The text with a mark in place of each half of a character, which no file can hold.</summary>
    private static string Whole(string text) => Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text));
}
