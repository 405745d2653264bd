using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;
using Loadmark.Files.Parsing;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Forms;

/// <summary>
/// What can be typed about the things of a rig, field by field, read and refused exactly as in a rig file. Empty fields say nothing.
/// </summary>
public static class GearForm
{
    /// <summary>The fields of a load.</summary>
    public static IReadOnlyList<FormField> LoadFields { get; } = FieldValues.Fields(LoadKeys.Table);

    /// <summary>The fields of a supply, without its outlets and banks.</summary>
    public static IReadOnlyList<FormField> SupplyFields { get; } = FieldValues.Fields(SupplyKeys.Table);

    /// <summary>The fields of an outlet.</summary>
    public static IReadOnlyList<FormField> OutletFields { get; } = FieldValues.Fields(OutletKeys.Table);

    /// <summary>The fields of a lead.</summary>
    public static IReadOnlyList<FormField> LeadFields { get; } = FieldValues.Fields(LeadKeys.Table);

    /// <summary>The fields of the rig as a whole: mains and headroom.</summary>
    public static IReadOnlyList<FormField> RigFields { get; } = FieldValues.Fields(RigKeys.Rig);

    /// <summary>What a key of the rig file is called, for people; the key itself where it is of no field.</summary>
    /// <param name="key">The key; of whatever it is, its field has the same title.</param>
    public static string TitleOf(string key)
    {
        IEnumerable<FormField> fields = [.. LoadFields, .. SupplyFields, .. OutletFields, .. LeadFields, .. RigFields];
        return fields.FirstOrDefault(field => field.Key == key)?.Title ?? key;
    }

    /// <summary>What is typed about a load, by key.</summary>
    public static IReadOnlyDictionary<string, string> ValuesOf(Load load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return FieldValues.Of(load, LoadKeys.Table);
    }

    /// <summary>What is typed about a supply, by key; its outlets and banks are not among it.</summary>
    public static IReadOnlyDictionary<string, string> ValuesOf(Supply supply)
    {
        ArgumentNullException.ThrowIfNull(supply);
        return FieldValues.Of(supply, SupplyKeys.Table);
    }

    /// <summary>What is typed about an outlet, by key.</summary>
    public static IReadOnlyDictionary<string, string> ValuesOf(Outlet outlet)
    {
        ArgumentNullException.ThrowIfNull(outlet);
        return FieldValues.Of(outlet, OutletKeys.Table);
    }

    /// <summary>What is typed about a lead, by key.</summary>
    public static IReadOnlyDictionary<string, string> ValuesOf(Lead lead)
    {
        ArgumentNullException.ThrowIfNull(lead);
        return FieldValues.Of(lead, LeadKeys.Table);
    }

    /// <summary>What is typed about the rig as a whole, by key.</summary>
    public static IReadOnlyDictionary<string, string> ValuesOf(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return FieldValues.Of(rig, RigKeys.Rig);
    }

    /// <summary>Reads a load.</summary>
    /// <param name="id">Its tag.</param>
    /// <param name="values">What was typed, by key.</param>
    public static FormResult<Load> ReadLoad(string id, IReadOnlyDictionary<string, string> values) =>
        FieldValues.Read(values, LoadKeys.Table, (group, errors) => LoadReader.Read(FieldValues.Node(id), group, errors));

    /// <summary>Reads a supply whose outlets are not among what was typed.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="values">What was typed, by key.</param>
    /// <param name="before">
    /// The supply as it was. Its banks are kept, and so are its outlets, unless they were the ones that its label says: then they are those
    /// of the label that was typed, see <see cref="LabelledOutlets.After"/>.
    /// </param>
    public static FormResult<Supply> ReadSupply(string id, IReadOnlyDictionary<string, string> values, Supply before)
    {
        ArgumentNullException.ThrowIfNull(before);
        return FieldValues.Read(values, SupplyKeys.Table, (group, errors) =>
        {
            // The outlets are in other hands; with one, the supply is whole whatever its label says.
            var outlets = new MappingNode(group.Start, isFlow: true);
            outlets.Entries.Add((FieldValues.Node("1"), FieldValues.Node("")));
            group.Entries.Add((FieldValues.Node(SupplyKeys.Outlets), outlets));
            var read = SupplyReader.Read(FieldValues.Node(id), group, new OutletAllowance(), errors);
            return read is null ? null : read with { Outlets = LabelledOutlets.After(before, read.Label), Banks = before.Banks };
        });
    }

    /// <summary>Reads a supply that has the outlets which its label says.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="values">What was typed, by key.</param>
    /// <returns>The supply; or what is wrong, also where its label does not tell what outlets it has.</returns>
    public static FormResult<Supply> ReadSupply(string id, IReadOnlyDictionary<string, string> values) =>
        FieldValues.Read(
            values, SupplyKeys.Table, (group, errors) => SupplyReader.Read(FieldValues.Node(id), group, new OutletAllowance(), errors));

    /// <summary>Reads an outlet.</summary>
    /// <param name="id">Its id within its supply; no range.</param>
    /// <param name="values">What was typed, by key.</param>
    public static FormResult<Outlet> ReadOutlet(string id, IReadOnlyDictionary<string, string> values)
    {
        var (outlets, faults) = ReadOutlets(id, values);
        return new FormResult<Outlet>(outlets?[0], faults);
    }

    /// <summary>
    /// Reads outlets typed on one line: an id or a range of ids, a colon and what is printed there (<c>5-6: 9 V 150 mA</c>). Without an id
    /// the next free number counts.
    /// </summary>
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
        var (outlets, faults) = ReadOutlets(id, new Dictionary<string, string> { ["label"] = label });
        if (outlets is null)
            return ([], faults.Values.First());
        return outlets.Find(outlet => present.Items.Any(other => other.Id == outlet.Id)) is { } twice
            ? ([], $"There is an outlet {twice.Id} already.")
            : ([.. outlets], null);
    }

    /// <summary>Reads a lead.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="values">What was typed, by key.</param>
    public static FormResult<Lead> ReadLead(string id, IReadOnlyDictionary<string, string> values) =>
        FieldValues.Read(values, LeadKeys.Table, (group, errors) => LeadReader.Read(FieldValues.Node(id), group, errors));

    /// <summary>Reads what is typed about the rig as a whole; the result has its mains and headroom and nothing else.</summary>
    /// <param name="values">What was typed, by key.</param>
    public static FormResult<Rig> ReadRig(IReadOnlyDictionary<string, string> values) =>
        FieldValues.Read(values, RigKeys.Rig, static (group, errors) =>
        {
            group.Entries.Add((FieldValues.Node("rig"), FieldValues.Node("form")));
            return RigTreeReader.Read(group, errors, library: null);
        });

    /// <summary>The outlets of an id or of a range of them; null where something is wrong.</summary>
    private static FormResult<List<Outlet>> ReadOutlets(string id, IReadOnlyDictionary<string, string> values) =>
        FieldValues.Read(values, OutletKeys.Table, (group, errors) =>
        {
            var outlets = new List<Outlet>();
            OutletReader.Read(FieldValues.Node(id), group, [], outlets, new OutletAllowance(), errors);
            return outlets;
        });
}
