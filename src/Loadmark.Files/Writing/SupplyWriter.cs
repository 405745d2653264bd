using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;
using Loadmark.Files.Values;

namespace Loadmark.Files.Writing;

/// <summary>Writes one supply into a rig file.</summary>
internal static class SupplyWriter
{
    /// <summary>Of one that is taken from the library, up to this many keys stand on one line.</summary>
    private const int MostOnALine = 3;

    /// <summary>Writes the supply's id and its keys; of one that has only a label, which says its outlets, the label alone.</summary>
    /// <param name="yaml">Where to.</param>
    /// <param name="supply">The supply.</param>
    /// <param name="listsOutlets">Whether its outlets are listed though its label says them.</param>
    public static void Write(YamlWriter yaml, Supply supply, bool listsOutlets = false)
    {
        yaml.Text(supply.Id);
        if (OwnKeys.Base(supply.FromLibrary, supply.Id, static given => given.Id) is { } given)
        {
            OwnKeys.Write(yaml, keys => WriteKeys(keys, supply, listsOutlets), keys => WriteKeys(keys, given, listsOutlets), MostOnALine);
            return;
        }

        if (!listsOutlets && supply.Label is { } label && supply == new Supply { Id = supply.Id, Label = label, Outlets = supply.Outlets }
            && LabelledOutlets.AreOf(supply))
        {
            yaml.Text(label.Text);
            return;
        }

        yaml.BeginGroup();
        WriteKeys(yaml, supply, listsOutlets);
        yaml.EndGroup();
    }

    /// <summary>
    /// Writes all that is said of the supply, wherever it comes from. Outlets that its label says are not listed, unless that is asked for.
    /// </summary>
    public static void WriteKeys(YamlWriter yaml, Supply supply, bool listsOutlets = false)
    {
        foreach (var key in SupplyKeys.Table.Keys)
        {
            if (key is FieldKey<Supply> field)
                yaml.Field(supply, field);
            else if (key.Name == SupplyKeys.Outlets && (listsOutlets || !LabelledOutlets.AreOf(supply)))
                WriteOutlets(yaml, supply);
            else if (key.Name == SupplyKeys.Banks)
                WriteBanks(yaml, supply);
        }
    }

    private static void WriteOutlets(YamlWriter yaml, Supply supply)
    {
        yaml.Text(SupplyKeys.Outlets);
        yaml.BeginGroup();
        foreach (var outlet in supply.Outlets)
        {
            yaml.Text(outlet.Id, numberIsFine: true);
            if (outlet == new Outlet { Id = outlet.Id, Label = outlet.Label })
                yaml.Text(outlet.Label.Text);
            else
                WriteOutlet(yaml, outlet);
        }

        yaml.EndGroup();
    }

    private static void WriteOutlet(YamlWriter yaml, Outlet outlet)
    {
        yaml.BeginGroup(flow: true);
        yaml.Fields(outlet, OutletKeys.Table);
        yaml.EndGroup();
    }

    private static void WriteBanks(YamlWriter yaml, Supply supply)
    {
        if (supply.Banks.Count == 0)
            return;
        yaml.Text(SupplyKeys.Banks);
        yaml.BeginGroup(flow: true);
        foreach (var bank in supply.Banks)
            yaml.Entry(bank.Name, QuantityWriter.Of(bank.Total));
        yaml.EndGroup();
    }
}
