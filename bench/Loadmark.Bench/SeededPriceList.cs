using System.Globalization;
using System.Text;
using Loadmark.Core.Offers;
using Loadmark.Files.PriceLists;

namespace Loadmark.Bench;

/// <summary>Invented price lists of any length, the same for the same seed: bricks of many sizes, and adaptors.</summary>
internal static class SeededPriceList
{
    private static readonly string[] Common = ["9 V DC 100 mA", "9 V DC 150 mA", "9 V DC 200 mA", "9 V DC 300 mA", "9 V DC 500 mA"];
    private static readonly string[] Special =
    [
        "12 V DC 300 mA", "12 V DC 500 mA", "18 V DC 150 mA", "18 V DC 300 mA", "9-18 V DC 300 mA", "9 V DC 500 mA; 12 V DC 400 mA; 18 V DC 250 mA", "9 V AC 1 A",
    ];

    private static readonly string[] Adaptor = ["9 V DC 300 mA", "9 V DC 600 mA", "9 V DC 1 A", "9 V DC 2 A", "12 V DC 500 mA", "12 V DC 1 A", "15 V DC 500 mA", "18 V DC 500 mA", "9 V AC 1 A"];

    /// <summary>Makes a list.</summary>
    /// <param name="seed">The same seed makes the same list.</param>
    /// <param name="length">How many offers.</param>
    public static IReadOnlyList<Offer> Make(int seed, int length) => [.. PriceListReader.Read(Text(seed, length), "seeded").Offers!.Value];

    /// <summary>Makes the text of a list.</summary>
    /// <param name="seed">The same seed makes the same list.</param>
    /// <param name="length">How many offers.</param>
    public static string Text(int seed, int length)
    {
        // Seeded and not for secrets: the same list every time.
        var random = new Random(seed);
        var text = new StringBuilder("supply,price,mass_g,outlets,total,isolated,mains\n");
        for (var offer = 1; offer <= length; offer++)
        {
            var outlets = random.Next(4) == 0 ? 0 : random.Next(2, 11);
            var special = outlets == 0 ? 0 : random.Next(0, Math.Min(4, outlets));
            var cells = outlets == 0
                ? $"1: {Adaptor[random.Next(Adaptor.Length)]}"
                : $"1-{outlets}: {Common[random.Next(Common.Length)]}" + string.Concat(Enumerable.Range(outlets + 1, special).Select(id => $" | {id}: {Special[random.Next(Special.Length)]}"));
            var price = 8 + (outlets * random.Next(5, 14)) + (special * random.Next(6, 18)) + (random.Next(10) * 0.5m);
            var mass = 90 + ((outlets + special) * random.Next(30, 70));
            var total = outlets > 0 && random.Next(2) == 0 ? $"{(outlets * random.Next(1, 4)) + (special * 3) + 3} W" : "";
            text.Append(CultureInfo.InvariantCulture, $"P-{offer:00},{price},{mass},{cells},{total},{(outlets > 0 && random.Next(4) > 0 ? "yes" : "no")},100-240 V\n");
        }

        return text.ToString();
    }
}
