using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;
using Loadmark.Files.Values;

namespace Loadmark.Files.Writing;

/// <summary>Writes one supply.</summary>
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

        if (!listsOutlets && supply.Label is { } label && supply == new Supply { Id = supply.Id, Label = label, Outlets = supply.Outlets } && LabelledOutlets.AreOf(supply))
        {
            yaml.Text(label.Text);
            return;
        }

        yaml.BeginGroup();
        WriteKeys(yaml, supply, listsOutlets);
        yaml.EndGroup();
    }

    /// <summary>Writes all that is said of the supply, wherever it comes from. Outlets that its label says are not listed, unless that is asked for.</summary>
    public static void WriteKeys(YamlWriter yaml, Supply supply, bool listsOutlets = false)
    {
        yaml.Entry("name", supply.Name);
        yaml.Entry("label", supply.Label?.Text);
        yaml.Entry("isolated", supply.Isolated);
        yaml.Entry("total", supply.Total is { } total ? TotalText(total) : null);
        if (listsOutlets || !LabelledOutlets.AreOf(supply))
            WriteOutlets(yaml, supply);
        WriteBanks(yaml, supply);
        yaml.Entry("overload", supply.Overload is { } way ? RigWords.Overload.WordOf(way) : null);
        yaml.Entry("regulated", supply.Regulated);
        yaml.Entry("mains", supply.Mains?.Text);
    }

    private static void WriteOutlets(YamlWriter yaml, Supply supply)
    {
        yaml.Text("outlets");
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
        yaml.Entry("label", outlet.Label.Text.Length == 0 ? null : outlet.Label.Text);
        yaml.Entry("isolated", outlet.Isolated);
        yaml.Entry("bank", outlet.Bank);
        yaml.Entry("polarity", outlet.Polarity is { } polarity ? RigWords.Polarity.WordOf(polarity) : null);
        yaml.Entry("plug", outlet.Plug?.Name);
        yaml.Entry("source_ohms", outlet.SourceOhms);
        yaml.Entry("surge", outlet.Surge is { } surge ? LoadWriter.TimedText(surge) : null);
        yaml.Entry("no_load", outlet.NoLoad);
        yaml.EndGroup();
    }

    private static void WriteBanks(YamlWriter yaml, Supply supply)
    {
        if (supply.Banks.Count == 0)
            return;
        yaml.Text("banks");
        yaml.BeginGroup(flow: true);
        foreach (var bank in supply.Banks)
            yaml.Entry(bank.Name, TotalText(bank.Total));
        yaml.EndGroup();
    }

    private static string TotalText(SupplyTotal total) => (total.Amps, total.Watts) switch
    {
        ({ } amps, { } watts) => $"{FigureText.Of(amps)} {FigureText.Of(watts)}",
        ({ } amps, null) => FigureText.Of(amps),
        (null, { } watts) => FigureText.Of(watts),
        _ => throw new ArgumentException("A total has amps or watts.", nameof(total)),
    };
}
