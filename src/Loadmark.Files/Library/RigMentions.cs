using System.Text;
using Loadmark.Core.Gear;
using Loadmark.Files.Errors;
using Loadmark.Files.Parsing;
using Loadmark.Files.Texts;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Library;

/// <summary>Names the gear of a rig without reading what is said of it.</summary>
public static class RigMentions
{
    private static readonly (string Section, GearKind Kind)[] Sections =
        [("loads", GearKind.Load), ("supplies", GearKind.Supply), ("leads", GearKind.Lead)];

    /// <summary>The gear that a rig file names among its loads, supplies and leads.</summary>
    /// <param name="text">The text of a rig file; one in which single figures cannot be read will do.</param>
    /// <returns>The gear, each once; null when the text is no file of that shape.</returns>
    public static IReadOnlyCollection<GearMention>? Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        text = text.TrimStart('\uFEFF');
        var errors = new ErrorList("");
        if (text.Length > RigFileReader.MostBytes || ControlCharacters.FirstIn(text) >= 0
            || TreeReader.Read(text, errors) is not MappingNode root || errors.Any)
            return null;
        var found = new List<GearMention>();
        foreach (var (section, kind) in Sections)
        {
            foreach (var (id, _) in (root.Find(section) as MappingNode)?.Entries ?? [])
            {
                if (Ids.Problem(id.Value, mayHaveSlash: true) is null && !HoldsHalfACharacter(id.Value))
                    found.Add(new GearMention(kind, id.Value));
            }
        }

        return found;
    }

    /// <summary>YAML can spell half of a surrogate pair, which no list of names holds.</summary>
    private static bool HoldsHalfACharacter(string id) => id.EnumerateRunes().Contains(Rune.ReplacementChar);
}
