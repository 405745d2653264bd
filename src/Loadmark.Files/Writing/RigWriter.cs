using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;

namespace Loadmark.Files.Writing;

/// <summary>Writes what a rig file holds, in the program's own spelling and order of keys.</summary>
internal static class RigWriter
{
    /// <summary>Writes the keys of a rig. Whether it reads back is for the caller to check.</summary>
    public static void Write(YamlWriter yaml, Rig rig)
    {
        yaml.BeginGroup();
        yaml.Entry("rig", rig.Name);
        yaml.Fields(rig, RigKeys.Rig);
        WriteNamed(yaml, "loads", rig.Loads, LoadWriter.Write);
        WriteNamed(yaml, "supplies", rig.Supplies, static (supplies, supply) => SupplyWriter.Write(supplies, supply));
        WriteNamed(yaml, "leads", rig.Leads, WiringWriter.WriteLead);
        if (rig.Wired is { } wired)
            WiringWriter.WriteWired(yaml, wired);
        if (rig.Signal.Count > 0)
        {
            yaml.Text("signal");
            yaml.BeginList(flow: true);
            foreach (var word in rig.Signal)
                yaml.Text(word);
            yaml.EndList();
        }

        yaml.EndGroup();
    }

    private static void WriteNamed<T>(YamlWriter yaml, string key, ValueList<T> things, Action<YamlWriter, T> write)
    {
        if (things.Count == 0)
            return;
        yaml.Text(key);
        yaml.BeginGroup();
        foreach (var thing in things)
            write(yaml, thing);
        yaml.EndGroup();
    }
}
