using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;

namespace Loadmark.Files.Writing;

/// <summary>Writes one load into a rig file.</summary>
internal static class LoadWriter
{
    /// <summary>Up to this many keys stand on one line.</summary>
    private const int MostOnALine = 3;

    /// <summary>Writes the load's tag and its keys; of one that has only a label, the label alone.</summary>
    public static void Write(YamlWriter yaml, Load load)
    {
        yaml.Text(load.Id);
        if (OwnKeys.Base(load.FromLibrary, load.Id, static given => given.Id) is { } given)
        {
            OwnKeys.Write(yaml, keys => keys.Fields(load, LoadKeys.Table), keys => keys.Fields(given, LoadKeys.Table), MostOnALine);
            return;
        }

        if (load.Label is { Text.Length: > 0 } label && load == new Load { Id = load.Id, Label = label })
        {
            yaml.Text(label.Text);
            return;
        }

        yaml.BeginGroup(flow: LoadKeys.Table.CountSaid(load) <= MostOnALine);
        yaml.Fields(load, LoadKeys.Table);
        yaml.EndGroup();
    }
}
