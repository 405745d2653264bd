using Loadmark.Core.Rigs;
using Field = Loadmark.Files.Keys.FieldKey<Loadmark.Core.Rigs.Lead>;

namespace Loadmark.Files.Keys;

/// <summary>The keys of a lead.</summary>
internal static class LeadKeys
{
    private const int MostOfAKind = 1_000;
    private const string LengthForm = "a length such as 0.5 m";
    private const string OhmsForm = "a resistance such as 0.02 Ω";

    /// <summary>The keys of a lead, in the order in which they are written.</summary>
    public static FieldTable<Lead> Table { get; } = new("lead", "a lead",
        Field.Of("type", "Type", ValueKinds.LeadType,
            static lead => lead.Type, static (lead, type) => lead with { Type = type },
            "What sort of lead it is. Default: straight.",
            columns: ["kind", "sort"]),
        Field.Of("length", "Length", ValueKinds.Of<Metre>(LengthForm),
            static lead => lead.Length, static (lead, length) => lead with { Length = length },
            "From end to end. Default: 0.5 m, assumed.",
            examples: ["0.5 m"]),
        Field.Of("tail", "From the supply to the first plug", ValueKinds.Of<Metre>(LengthForm),
            static lead => lead.Tail, static (lead, tail) => lead with { Tail = tail },
            "Of a chain: from the supply to the first plug.",
            examples: ["1.2 m"]),
        Field.Of("pitch", "From plug to plug", ValueKinds.Of<Metre>(LengthForm),
            static lead => lead.Pitch, static (lead, pitch) => lead with { Pitch = pitch },
            "Of a chain: from one plug to the next.",
            examples: ["0.25 m"]),
        Field.Of("plugs", "Plugs for loads", ValueKinds.Number(1, MostOfAKind),
            static lead => lead.Plugs, static (lead, plugs) => lead with { Plugs = plugs },
            "How many loads it has plugs for. Default: one; of a chain, not known."),
        Field.Of("wire", "Wire", ValueKinds.Wire,
            static lead => lead.Wire, static (lead, wire) => lead with { Wire = wire },
            "The size of its conductors, by area or American wire gauge. Default: 0.22 mm², assumed.",
            examples: ["0.22 mm²", "AWG 24"], columns: ["conductor", "gauge"]),
        Field.Of("ohms", "Resistance of each conductor", ValueKinds.Of<Ohm>(OhmsForm, keySaysUnit: true),
            static lead => lead.Ohms, static (lead, ohms) => lead with { Ohms = ohms },
            "The resistance of each conductor, instead of length and wire.",
            examples: ["0.08 Ω"]),
        Field.Of("contact_ohms", "Resistance of each contact", ValueKinds.Of<Ohm>(OhmsForm, keySaysUnit: true),
            static lead => lead.ContactOhms, static (lead, ohms) => lead with { ContactOhms = ohms },
            "The resistance of each mated contact. Default: 0.02 Ω, assumed.",
            examples: ["0.02 Ω"]),
        Field.Of("plug", "Plug", ValueKinds.Plug,
            static lead => lead.Plug, static (lead, plug) => lead with { Plug = plug },
            "The plug at its load ends, outer by inner diameter in mm. Without it, the outlet's.",
            examples: RigWords.PlugExamples, columns: ["connector", "plug size"]),
        Field.Of("count", "How many there are", ValueKinds.Number(1, MostOfAKind),
            static lead => lead.Count, static (lead, count) => lead with { Count = count },
            "How many such leads there are. Default: 1; of a straight one, as many as are wanted.",
            columns: ["number", "quantity"]));
}
