using Loadmark.Core.Gear;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Writing;

/// <summary>Writes a thing that is taken from the gear library: where it is from, and what is said of it beside that.</summary>
internal static class OwnKeys
{
    /// <summary>What the library says of a thing, where its rig goes on taking it from there; null when it does not.</summary>
    /// <param name="given">What the library says; null when it was not asked.</param>
    /// <param name="id">The thing's tag in the rig.</param>
    /// <param name="idOf">The tag in the library.</param>
    public static T? Base<T>(T? given, string id, Func<T, string> idOf)
        where T : class =>
        given is not null && GearTag.KeyOf(idOf(given)) == GearTag.KeyOf(id) ? given : null;

    /// <summary>Writes the keys.</summary>
    /// <param name="yaml">Where to.</param>
    /// <param name="write">Writes the keys of the thing.</param>
    /// <param name="writeGiven">Writes the keys of what the library says.</param>
    /// <param name="mostOnALine">Up to so many keys stand on one line.</param>
    public static void Write(YamlWriter yaml, Action<YamlWriter> write, Action<YamlWriter> writeGiven, int mostOnALine)
    {
        var (all, given) = (GroupOf(write), GroupOf(writeGiven));
        var own = all.Entries.Where(entry => given.Find(entry.Key.Value) is not { } same || !NodeText.Same(same, entry.Value)).ToList();
        var gone = given.Entries.Where(entry => !all.Entries.Exists(one => one.Key.Value == entry.Key.Value)).ToList();
        yaml.BeginGroup(flow: own.Count + gone.Count < mostOnALine && own.TrueForAll(static entry => NodeText.IsInline(entry.Value)));
        yaml.Entry("from", RigWords.GearSource.WordOf(GearSource.Library));
        foreach (var (key, value) in own)
        {
            yaml.Text(key.Value);
            yaml.Tree(value);
        }

        foreach (var (key, _) in gone)
            yaml.Nothing(key.Value);
        yaml.EndGroup();
    }

    private static MappingNode GroupOf(Action<YamlWriter> write) => TreeBuilder.TreeOf(yaml =>
    {
        yaml.BeginGroup();
        write(yaml);
        yaml.EndGroup();
    });
}
