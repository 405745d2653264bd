using System.Text.Json;
using Loadmark.Planning.Buying;
using Loadmark.Planning.Explaining;
using Loadmark.Shapes;

namespace Loadmark.Answers;

/// <summary>Writes the answer to what should be bought as JSON. The price has no unit: it is in the money of the price list.</summary>
internal static class BuyJson
{
    private const decimal GramsInKilogram = 1000m;

    /// <summary>Writes the answer and a line end.</summary>
    public static void Write(Stream output, BuyResult result)
    {
        JsonFigures.WriteLine(output, json =>
        {
            json.WriteStartObject();
            json.WriteString("rig", result.Rig.Name);
            json.WriteString("status", result.Status.ToString().ToLowerInvariant());
            json.WriteFigure("priceBound", result.PriceBound);
            json.WriteList("options", result.Front, Write);
            json.WriteBoolean("optionsComplete", result.IsFrontComplete);
            json.WriteTexts("room", result.Room);
            json.WriteTexts("unsuited", result.Unsuited);
            json.WriteTexts("needLeads", result.NeedLeads);
            json.WriteList("leftOut", result.LeftOut, Write);
            json.WriteEndObject();
        });
    }

    private static void Write(Utf8JsonWriter json, BuyOption option)
    {
        json.WriteStartObject();
        json.WriteList("buy", option.Purchases, Write);
        json.WriteFigure("price", option.Price);
        json.WriteFigure("massKilograms", option.MassGrams / GramsInKilogram);
        json.WriteFigure("spareWatts", option.Spare.Value);
        json.WritePropertyName("plan");
        PlanJson.Write(json, option.Plan, new PlanExplanation([], []));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Purchase purchase)
    {
        json.WriteStartObject();
        json.WriteString("supply", purchase.Offer.Id);
        json.WriteNumber("count", purchase.Count);
        json.WriteFigure("price", purchase.Offer.Price);
        json.WriteFigure("massKilograms", purchase.Offer.MassGrams / GramsInKilogram);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, OfferLeftOut left)
    {
        json.WriteStartObject();
        json.WriteString("supply", left.Offer.Id);
        json.WriteString("because", left.Because);
        json.WriteEndObject();
    }
}
