using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;
using Loadmark.Files.Writing;

namespace Loadmark.Files.Forms;

/// <summary>
/// What can be typed about the things of a rig, field by field, read and refused exactly as in a rig file. Empty fields say nothing.
/// </summary>
public static class GearForm
{
    /// <summary>The fields of a load.</summary>
    public static IReadOnlyList<FormField> LoadFields { get; } = FieldValues.Fields(LoadKeys.Table, "from");

    /// <summary>The fields of a supply, without its outlets and banks.</summary>
    public static IReadOnlyList<FormField> SupplyFields { get; } = FieldValues.Fields(SupplyKeys.Table, "from", "outlets", "banks");

    /// <summary>The fields of an outlet.</summary>
    public static IReadOnlyList<FormField> OutletFields { get; } = FieldValues.Fields(OutletKeys.Table);

    /// <summary>The fields of a lead.</summary>
    public static IReadOnlyList<FormField> LeadFields { get; } = FieldValues.Fields(LeadKeys.Table);

    /// <summary>The fields of the rig as a whole: mains and headroom.</summary>
    public static IReadOnlyList<FormField> RigFields { get; } = FieldValues.Fields(RigKeys.Rig, "rig", "loads", "supplies", "leads", "wired", "signal");

    /// <summary>What is typed about a load, by key.</summary>
    public static IReadOnlyDictionary<string, string> ValuesOf(Load load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return FieldValues.Of(yaml => LoadWriter.Write(yaml, load with { FromLibrary = null }), load.Id);
    }

    /// <summary>What is typed about a supply, by key; its outlets and banks are not among it.</summary>
    public static IReadOnlyDictionary<string, string> ValuesOf(Supply supply)
    {
        ArgumentNullException.ThrowIfNull(supply);
        return FieldValues.Of(yaml => SupplyWriter.Write(yaml, supply with { FromLibrary = null }), supply.Id);
    }

    /// <summary>What is typed about an outlet, by key.</summary>
    public static IReadOnlyDictionary<string, string> ValuesOf(Outlet outlet)
    {
        ArgumentNullException.ThrowIfNull(outlet);
        var alone = new Supply { Id = "s", Outlets = [outlet] };
        return FieldValues.Of(yaml => SupplyWriter.Write(yaml, alone), "s", "outlets", outlet.Id);
    }

    /// <summary>What is typed about a lead, by key.</summary>
    public static IReadOnlyDictionary<string, string> ValuesOf(Lead lead)
    {
        ArgumentNullException.ThrowIfNull(lead);
        return FieldValues.Of(yaml => WiringWriter.WriteLead(yaml, lead), lead.Id);
    }

    /// <summary>What is typed about the rig as a whole, by key.</summary>
    public static IReadOnlyDictionary<string, string> ValuesOf(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var text = RigFileWriter.Write(new Rig { Name = "form", Mains = rig.Mains, Headroom = rig.Headroom });
        return FieldValues.Of(yaml => WriteLines(yaml, text));
    }

    /// <summary>Reads a load.</summary>
    /// <param name="id">Its tag.</param>
    /// <param name="values">What was typed, by key.</param>
    public static FormReading<Load> ReadLoad(string id, IReadOnlyDictionary<string, string> values)
    {
        var (reading, faults) = FieldValues.Read(values, LoadKeys.Table, ["loads", id]);
        return new FormReading<Load>(reading.Rig?.Loads[0], faults);
    }

    /// <summary>Reads a supply whose outlets are not among what was typed.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="values">What was typed, by key.</param>
    /// <param name="before">
    /// The supply as it was. Its banks are kept, and so are its outlets, unless they were the ones that its label says: then they are those
    /// of the label that was typed, see <see cref="LabelledOutlets.After"/>.
    /// </param>
    public static FormReading<Supply> ReadSupply(string id, IReadOnlyDictionary<string, string> values, Supply before)
    {
        ArgumentNullException.ThrowIfNull(before);
        var (reading, faults) = FieldValues.Read(values, SupplyKeys.Table, ["supplies", id], WriteAnOutlet);
        var read = reading.Rig?.Supplies[0];
        return new FormReading<Supply>(read is null ? null : read with { Outlets = LabelledOutlets.After(before, read.Label), Banks = before.Banks }, faults);
    }

    /// <summary>Reads a supply that has the outlets which its label says.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="values">What was typed, by key.</param>
    /// <returns>The supply; or what is wrong, also where its label does not tell what outlets it has.</returns>
    public static FormReading<Supply> ReadSupply(string id, IReadOnlyDictionary<string, string> values)
    {
        var (reading, faults) = FieldValues.Read(values, SupplyKeys.Table, ["supplies", id]);
        return new FormReading<Supply>(reading.Rig?.Supplies[0], faults);
    }

    /// <summary>Reads an outlet.</summary>
    /// <param name="id">Its id within its supply; no range.</param>
    /// <param name="values">What was typed, by key.</param>
    public static FormReading<Outlet> ReadOutlet(string id, IReadOnlyDictionary<string, string> values)
    {
        var (reading, faults) = FieldValues.Read(values, OutletKeys.Table, ["supplies", "s", "outlets", id]);
        return new FormReading<Outlet>(reading.Rig?.Supplies[0].Outlets[0], faults);
    }

    /// <summary>Reads outlets typed on one line: an id or a range of ids, a colon and what is printed there (<c>5-6: 9 V 150 mA</c>). Without an id the next free number counts.</summary>
    /// <param name="line">What was typed.</param>
    /// <param name="present">The outlets that the supply has.</param>
    /// <returns>The outlets; or what is wrong, in a sentence.</returns>
    public static (ValueList<Outlet> Outlets, string? Fault) ReadOutletLine(string line, ValueList<Outlet> present)
    {
        ArgumentNullException.ThrowIfNull(line);
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        var next = 1;
        while (present.Items.Any(outlet => outlet.Id == $"{next}"))
            next++;
        var (id, label) = colon < 0 ? ($"{next}", line.Trim()) : (line[..colon].Trim(), line[(colon + 1)..].Trim());
        var (reading, faults) = FieldValues.Read(new Dictionary<string, string> { ["label"] = label }, OutletKeys.Table, ["supplies", "s", "outlets", id]);
        if (reading.Rig is not { } rig)
            return ([], faults.Values.First());
        var outlets = rig.Supplies[0].Outlets;
        return outlets.Items.FirstOrDefault(outlet => present.Items.Any(other => other.Id == outlet.Id)) is { } twice
            ? ([], $"There is an outlet {twice.Id} already.")
            : (outlets, null);
    }

    /// <summary>Reads a lead.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="values">What was typed, by key.</param>
    public static FormReading<Lead> ReadLead(string id, IReadOnlyDictionary<string, string> values)
    {
        var (reading, faults) = FieldValues.Read(values, LeadKeys.Table, ["leads", id]);
        return new FormReading<Lead>(reading.Rig?.Leads[0], faults);
    }

    /// <summary>Reads what is typed about the rig as a whole; the result has its mains and headroom and nothing else.</summary>
    /// <param name="values">What was typed, by key.</param>
    public static FormReading<Rig> ReadRig(IReadOnlyDictionary<string, string> values)
    {
        var (reading, faults) = FieldValues.Read(values, RigKeys.Rig, []);
        return new FormReading<Rig>(reading.Rig, faults);
    }

    private static void WriteAnOutlet(YamlWriter yaml)
    {
        yaml.Text("outlets");
        yaml.BeginGroup(flow: true);
        yaml.Entry("1", "");
        yaml.EndGroup();
    }

    /// <summary>The top lines of a rig file, apart from its name, as entries of the group that is being written.</summary>
    private static void WriteLines(YamlWriter yaml, string text)
    {
        foreach (var line in text.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            if (colon > 0 && line[..colon] is var key and not "rig")
                yaml.Entry(key, line[(colon + 1)..].Trim());
        }
    }
}
