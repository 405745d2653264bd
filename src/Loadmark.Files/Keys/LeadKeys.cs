using Loadmark.Core.Gear;
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
        new Field("type", "Type", ValueKinds.Word(RigWords.LeadType),
            static lead => lead.Type, static (lead, value) => lead with { Type = value is LeadType said ? said : LeadType.Straight },
            "What sort of lead it is. Default: straight.", columns: ["kind", "sort"]),
        new Field("length", "Length", ValueKinds.Of(Unit.Metre, LengthForm),
            static lead => lead.Length, static (lead, value) => lead with { Length = value is Metres said ? said : null },
            "From end to end. Default: 0.5 m, assumed.", examples: ["0.5 m"]),
        new Field("tail", "From the supply to the first plug", ValueKinds.Of(Unit.Metre, LengthForm),
            static lead => lead.Tail, static (lead, value) => lead with { Tail = value is Metres said ? said : null },
            "Of a chain: from the supply to the first plug.", examples: ["1.2 m"]),
        new Field("pitch", "From plug to plug", ValueKinds.Of(Unit.Metre, LengthForm),
            static lead => lead.Pitch, static (lead, value) => lead with { Pitch = value is Metres said ? said : null },
            "Of a chain: from one plug to the next.", examples: ["0.25 m"]),
        new Field("plugs", "Plugs for loads", ValueKinds.Number(1, MostOfAKind),
            static lead => lead.Plugs, static (lead, value) => lead with { Plugs = value is int said ? said : null },
            "How many loads it has plugs for. Default: one; of a chain, not known."),
        new Field("wire", "Wire", ValueKinds.Wire,
            static lead => lead.Wire, static (lead, value) => lead with { Wire = value is Wire said ? said : null },
            "The size of its conductors, by area or American wire gauge. Default: 0.22 mm², assumed.",
            examples: ["0.22 mm²", "AWG 24"], columns: ["conductor", "gauge"]),
        new Field("ohms", "Resistance of each conductor", ValueKinds.Of(Unit.Ohm, OhmsForm, keySaysUnit: true),
            static lead => lead.Ohms, static (lead, value) => lead with { Ohms = value is Ohms said ? said : null },
            "The resistance of each conductor, instead of length and wire.", examples: ["0.08 Ω"]),
        new Field("contact_ohms", "Resistance of each contact", ValueKinds.Of(Unit.Ohm, OhmsForm, keySaysUnit: true),
            static lead => lead.ContactOhms, static (lead, value) => lead with { ContactOhms = value is Ohms said ? said : null },
            "The resistance of each mated contact. Default: 0.02 Ω, assumed.", examples: ["0.02 Ω"]),
        new Field("plug", "Plug", ValueKinds.Plug,
            static lead => lead.Plug, static (lead, value) => lead with { Plug = value is Plug said ? said : null },
            "The plug at its load ends, outer by inner diameter in mm. Without it, the outlet's.",
            examples: RigWords.PlugExamples, columns: ["connector", "plug size"]),
        new Field("count", "How many there are", ValueKinds.Number(1, MostOfAKind),
            static lead => lead.Count, static (lead, value) => lead with { Count = value is int said ? said : null },
            "How many such leads there are. Default: 1; of a straight one, as many as are wanted.", columns: ["number", "quantity"]),
        new Field("to_buy", "Yet to be bought", ValueKinds.Flag,
            static lead => lead.ToBuy, static (lead, value) => lead with { ToBuy = value is true },
            "Whether it is yet to be bought or made: nobody has it. It counts as there, and is marked wherever it is shown. Default: no."));
}
