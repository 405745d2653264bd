using System.Text.Json;
using Loadmark.Planning.Buying;
using Loadmark.Planning.Explaining;

namespace Loadmark.Answers;

/// <summary>Writes the answer to what should be bought as JSON. The price has no unit: it is in the money of the price list.</summary>
internal static class BuyJson
{
    private const decimal GramsInKilogram = 1000m;

    /// <summary>Writes the answer and a line end.</summary>
    public static void Write(Stream output, BuyResult result)
    {
        using (var json = new Utf8JsonWriter(output, JsonFigures.Options))
        {
            json.WriteStartObject();
            json.WriteString("rig", result.Rig.Name);
            json.WriteString("status", result.Status.ToString().ToLowerInvariant());
            json.WriteFigure("priceBound", result.PriceBound);
            json.WriteStartArray("options");
            foreach (var option in result.Front)
                Write(json, option);
            json.WriteEndArray();
            json.WriteBoolean("optionsComplete", result.IsFrontComplete);
            json.WriteTexts("room", result.Room);
            json.WriteTexts("unsuited", result.Unsuited);
            json.WriteTexts("needLeads", result.NeedLeads);
            json.WriteStartArray("leftOut");
            foreach (var left in result.LeftOut)
                Write(json, left);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        output.Write("\n"u8);
        output.Flush();
    }

    private static void Write(Utf8JsonWriter json, BuyOption option)
    {
        json.WriteStartObject();
        json.WriteStartArray("buy");
        foreach (var (offer, count) in option.Purchases)
        {
            json.WriteStartObject();
            json.WriteString("supply", offer.Id);
            json.WriteNumber("count", count);
            json.WriteFigure("price", offer.Price);
            json.WriteFigure("massKilograms", offer.MassGrams / GramsInKilogram);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteFigure("price", option.Price);
        json.WriteFigure("massKilograms", option.MassGrams / GramsInKilogram);
        json.WriteFigure("spareWatts", option.Spare.Value);
        json.WritePropertyName("plan");
        PlanJson.Write(json, option.Plan, new PlanExplanation([], []));
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
