using System.Globalization;
using Loadmark.Planning.Cutting;

namespace Loadmark.Workshop.Sheets;

/// <summary>Reads reels and lengths as they are typed.</summary>
internal static class TypedReels
{
    private const int MostReels = 100;
    private const decimal MostMetres = 10_000;

    /// <summary>Reads the reels.</summary>
    /// <param name="typed">Such as <c>25 m</c>, <c>10 m x 2</c>.</param>
    /// <param name="reels">The reels; of those without a number there are as many as are needed.</param>
    /// <returns>Null when read; otherwise what was expected and found.</returns>
    public static string? Read(IReadOnlyList<string> typed, out IReadOnlyList<StockReel> reels)
    {
        var read = new List<StockReel>();
        reels = read;
        if (typed.Count > MostReels)
            return $"expected at most {MostReels} kinds of reel, found {typed.Count}.";
        foreach (var text in typed)
        {
            var parts = text.Split('x', '×');
            var count = 0;
            var isCounted = parts.Length == 2;
            if (parts.Length > 2 || !TryLength(parts[0], isZeroAllowed: false, out var length)
                || (isCounted && !TryCount(parts[1], out count)))
                return $"expected reels such as 25 m or 10 m x 2, up to {MostMetres} m, found \"{text}\".";
            read.Add(new StockReel($"{length}", length, isCounted ? count : null));
        }

        return null;
    }

    /// <summary>Reads a length of a few centimetres.</summary>
    /// <param name="typed">Such as <c>40 mm</c>; null for what stands already.</param>
    /// <param name="length">In: what stands already. Out: the length.</param>
    /// <returns>Null when read; otherwise what was expected and found.</returns>
    public static string? Read(string? typed, ref Metres length)
    {
        if (typed is null)
            return null;
        if (!TryLength(typed, isZeroAllowed: true, out var read))
            return $"expected a length such as 40 mm, found \"{typed}\".";
        length = read;
        return null;
    }

    private static bool TryCount(string text, out int count) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out count) && count >= 1;

    private static bool TryLength(string text, bool isZeroAllowed, out Metres length) =>
        QuantityReader.TryRead(text.Trim(), out length, out _) && length.Value <= MostMetres
            && (isZeroAllowed ? length.Value >= 0 : length.Value > 0);
}
