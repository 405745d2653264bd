using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Core.Texts;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;
using Loadmark.Files.Values;

namespace Loadmark.Files.Parsing;

/// <summary>Reads one supply with its outlets and banks.</summary>
internal static class SupplyReader
{
    private static readonly string TooMany =
        $"with the outlets of this supply the rig has more than {OutletAllowance.Most}; no rig has that many";

    /// <summary>The supply; null, with an error, when its value is neither a group of keys nor a text, which is its label.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="value">Its keys.</param>
    /// <param name="allowance">How many outlets the file may still name.</param>
    /// <param name="errors">Where faults go.</param>
    /// <param name="library">The gear library; null where there is none.</param>
    public static Supply? Read(ScalarNode id, Node value, OutletAllowance allowance, ErrorList errors, IGearLookup? library = null)
    {
        Ids.Check(id, "a supply", mayHaveSlash: false, errors);
        if (Fields.Of(value, id.Value, SupplyKeys.Table, errors) is not { } fields)
            return null;

        var given = LibraryReference.Find(fields, id, GearKind.Supply, library, static (from, tag) => from.FindSupply(tag));
        if (given is not null && !allowance.TryTake(given.Outlets.Count))
            errors.Add(id.Start, TooMany);
        var under = given is null ? new Supply { Id = id.Value } : given with { Id = id.Value, FromLibrary = given };
        var supply = fields.Over(under, SupplyKeys.Table);
        var outlets = ReadOutlets(fields, allowance);
        if (outlets.Count == 0 && fields.Find(SupplyKeys.Outlets) is null)
            outlets = OutletsOfLabel(fields, supply.Label, given, allowance);
        supply = supply with { Outlets = [.. outlets] };
        return fields.Says(SupplyKeys.Banks) ? supply with { Banks = [.. ReadBanks(fields, outlets)] } : supply;
    }

    /// <summary>
    /// The outlets where none are listed: the library's, unless something else is said of them or of the label here; else the label's.
    /// </summary>
    private static List<Outlet> OutletsOfLabel(Fields fields, Nameplate? label, Supply? given, OutletAllowance allowance)
    {
        if (given is not null && !fields.Says(SupplyKeys.Outlets))
            return [.. fields.Says("label") ? LabelledOutlets.After(given, label) : given.Outlets];
        if (LabelledOutlets.Of(label, out var problem) is not { } said)
        {
            // Where there is no label either, the key that is missing has been told of.
            if (fields.Find("label") is { } node)
            {
                var example = label is { EachOutlet: true }
                    ? "say how many, such as outlets: { 1-4: \"\" }"
                    : "list them, such as outlets: { 1-4: 9 V 150 mA }";
                fields.Errors.Add(
                    node.Start,
                    $"nothing tells what outlets this supply has: {problem}; {example}",
                    label?.Text,
                    "a label that says what it gives, or outlets");
            }

            return given is null ? [] : [.. given.Outlets];
        }

        if (!allowance.TryTake(said.Count))
            fields.Errors.Add(fields.Start, TooMany);
        return [.. said];
    }

    private static List<Outlet> ReadOutlets(Fields fields, OutletAllowance allowance)
    {
        var outlets = new List<Outlet>();
        if (fields.Find(SupplyKeys.Outlets) is not { } node)
            return outlets;
        if (node is not MappingNode mapping)
        {
            fields.Errors.ExpectedForm(
                node.Start, node.Form, SupplyKeys.Outlets, "outlet ids with their labels, such as { 1: 9 V 500 mA }");
            return outlets;
        }

        if (mapping.Entries.Count == 0)
            fields.Errors.Add(
                mapping.Start,
                "outlets: a supply has at least one outlet; write { 1: \"\" } for one as the supply's label says",
                "no outlets",
                "an outlet");
        var places = new Dictionary<string, Spot>(StringComparer.Ordinal);
        foreach (var (id, value) in mapping.Entries)
            OutletReader.Read(id, value, places, outlets, allowance, fields.Errors);
        return outlets;
    }

    private static List<Bank> ReadBanks(Fields fields, List<Outlet> outlets)
    {
        var banks = new List<Bank>();
        if (fields.Find(SupplyKeys.Banks) is not { } node)
            return banks;
        if (node is not MappingNode mapping)
        {
            fields.Errors.ExpectedForm(
                node.Start, node.Form, SupplyKeys.Banks, "names of banks with their totals, such as { left: 500 mA }");
            return banks;
        }

        var used = outlets.Select(outlet => outlet.Bank).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (var (name, value) in mapping.Entries)
        {
            if (Ids.Check(name, "a bank", mayHaveSlash: true, fields.Errors) && !used.Contains(name.Value))
                AddUnused(name, used, fields.Errors);
            if (ReadTotal(name, value, fields.Errors) is { } total)
                banks.Add(new Bank(name.Value, total));
        }

        return banks;
    }

    private static void AddUnused(ScalarNode name, HashSet<string> used, ErrorList errors)
    {
        var nearest = errors.IsFull ? null : NearestWord.Find(name.Value, used);
        var hint = nearest is null ? "give those outlets the key 'bank'" : $"did you mean '{nearest}'?";
        errors.Add(
            name.Start,
            $"no outlet of this supply names the bank '{ErrorList.Quote(name.Value)}'; {hint}",
            name.Value,
            "the bank of an outlet",
            nearest);
    }

    private static SupplyTotal? ReadTotal(ScalarNode name, Node value, ErrorList errors)
    {
        if (value is ScalarNode { IsNull: false } text)
            return QuantityParser.Total(text, name.Value, errors);
        return (SupplyTotal?)Fields.Of(value, name.Value, SupplyKeys.Bank, errors)?.Value("total", ValueKinds.Total);
    }
}
