using System.Text;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Texts;
using Loadmark.Files.Trees;
using Loadmark.Files.Writing;

namespace Loadmark.Files.Forms;

/// <summary>
/// Takes fields through the text of a small rig file and back, so that what is typed on a page is read, refused and written exactly as
/// it is in a file.
/// </summary>
internal static class FieldValues
{
    /// <summary>The fields of a table of keys that hold one value each.</summary>
    public static IReadOnlyList<FormField> Fields(KeyTable table, params string[] without) =>
    [
        .. table.Keys.Where(key => key.Group is null && !without.Contains(key.Name))
            .Select(static key => new FormField(key.Name, key.Description, [.. key.Words.Where(static word => !word.StartsWith("center", StringComparison.Ordinal))], key.Examples, key.Form == ValueForm.YesNo)),
    ];

    /// <summary>The values of a group in what a writer writes, by key.</summary>
    /// <param name="write">Writes a rig file.</param>
    /// <param name="path">The keys down to the group.</param>
    public static IReadOnlyDictionary<string, string> Of(Action<YamlWriter> write, params ReadOnlySpan<string> path)
    {
        var yaml = new YamlWriter();
        yaml.BeginGroup();
        write(yaml);
        yaml.EndGroup();
        var node = TreeReader.Read(yaml.Finish(), new ErrorList("form"));
        foreach (var key in path)
            node = node is MappingNode group ? group.Entries.FirstOrDefault(entry => entry.Key.Value == key).Value : null;
        var values = new Dictionary<string, string>(StringComparer.Ordinal);
        if (node is MappingNode found)
        {
            foreach (var (key, value) in found.Entries)
            {
                if (value is ScalarNode scalar)
                    values[key.Value] = scalar.Value;
            }
        }
        else if (node is ScalarNode single)
        {
            values["label"] = single.Value;
        }

        return values;
    }

    /// <summary>Reads typed values by way of a rig file with one key a line.</summary>
    /// <param name="values">The values by key; empty ones are left out.</param>
    /// <param name="table">The keys there are.</param>
    /// <param name="path">The keys down to the group; the last is the id of the thing.</param>
    /// <param name="tail">Writes what must follow in the group for it to be whole; may be null.</param>
    public static (RigReading Reading, IReadOnlyDictionary<string, string> Faults) Read(
        IReadOnlyDictionary<string, string> values, KeyTable table, string[] path, Action<YamlWriter>? tail = null)
    {
        var yaml = new YamlWriter();
        yaml.BeginGroup();
        yaml.Entry("rig", "form");
        foreach (var key in path)
        {
            yaml.Text(Whole(key), numberIsFine: true);
            yaml.BeginGroup();
        }

        var keys = new List<string>();
        foreach (var (key, typed) in values)
        {
            if (string.IsNullOrWhiteSpace(typed) || table.Keys.FirstOrDefault(known => known.Name == key) is not { } known)
                continue;
            keys.Add(key);
            Write(yaml, known, Whole(known.Name == "label" ? typed : typed.Trim())); // a label is kept as it stands
        }

        tail?.Invoke(yaml);
        for (var depth = path.Length; depth >= 0; depth--)
            yaml.EndGroup();

        var reading = RigFileReader.Read(yaml.Finish(), "form");
        var faults = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var error in reading.Errors)
        {
            var index = error.Line - path.Length - 2;
            faults.TryAdd(index >= 0 && index < keys.Count ? keys[index] : "", error.Message);
        }

        return (reading, faults);
    }

    /// <summary>The text with a mark in place of each half of a character, which no file can hold.</summary>
    private static string Whole(string text) => Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text));

    private static void Write(YamlWriter yaml, Key key, string typed)
    {
        if (key.Form == ValueForm.YesNo && YesNoText.Read(typed) is { } yes)
            yaml.Entry(key.Name, yes);
        else
            yaml.Entry(key.Name, typed, numberIsFine: true);
    }
}
