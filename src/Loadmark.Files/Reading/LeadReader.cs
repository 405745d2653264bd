using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Texts;
using Loadmark.Files.Trees;
using Loadmark.Files.Values;

namespace Loadmark.Files.Reading;

/// <summary>Reads one lead.</summary>
internal static class LeadReader
{
    private const int MostOfAKind = 1_000;
    private const string LengthForm = "a length such as 0.5 m";
    private const string OhmsForm = "a resistance such as 0.02 Ω";

    /// <summary>The lead; null, with an error, when its value is not a group of keys.</summary>
    public static Lead? Read(ScalarNode id, Node value, ErrorList errors)
    {
        Ids.Check(id, "a lead", mayHaveSlash: true, errors);
        if (Fields.Of(value, id.Value, RigKeys.Lead, errors) is not { } fields)
            return null;

        return new Lead
        {
            Id = id.Value,
            Type = fields.Word("type", RigWords.LeadType) ?? LeadType.Straight,
            Length = fields.Figure<Metre>("length", LengthForm),
            Tail = fields.Figure<Metre>("tail", LengthForm),
            Pitch = fields.Figure<Metre>("pitch", LengthForm),
            Plugs = fields.Number("plugs", 1, MostOfAKind),
            Wire = Figures.Conductor(fields.Scalar("wire", "a conductor such as 0.22 mm² or AWG 24"), errors),
            Ohms = fields.Figure<Ohm>("ohms", OhmsForm),
            ContactOhms = fields.Figure<Ohm>("contact_ohms", OhmsForm),
            Plug = fields.Text("plug") is { } plug ? new Plug(PlugText.Normalise(plug)) : null,
            Count = fields.Number("count", 1, MostOfAKind),
        };
    }
}
