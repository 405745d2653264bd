using ZXing.Common;
using ZXing.QrCode.Internal;

namespace Loadmark.Codes.Pictures;

/// <summary>
/// Finds the three squares at the corners of each QR code, however many codes there are. The library's own search for several codes looks
/// at every three squares of a picture; here their number is bounded, so that a picture full of squares takes a bounded time.
/// </summary>
internal sealed class FinderPatterns(BitMatrix image) : FinderPatternFinder(image)
{
    /// <summary>The most squares that are told apart in a picture.</summary>
    private const int MostSeen = 512;

    /// <summary>The most squares of which every three are looked at: those of 32 codes.</summary>
    private const int MostUsed = 96;

    private readonly List<(FinderPattern Pattern, int Times)> _centres = [];

    /// <summary>The squares that were crossed by at least two rows, those crossed most often first.</summary>
    /// <param name="cancellation">Stops the search.</param>
    public IReadOnlyList<FinderPattern> Find(CancellationToken cancellation)
    {
        var runs = new int[5];
        for (var y = 1; y < Image.Height && _centres.Count < MostSeen; y += 2)
        {
            cancellation.ThrowIfCancellationRequested();
            Array.Clear(runs);

            // The runs of a row, light and dark in turn: dark ones end at an even place, of which five are looked at.
            var isDark = false;
            var (length, known) = (0, 0);
            for (var x = 0; x <= Image.Width && _centres.Count < MostSeen; x++)
            {
                var dark = x < Image.Width && Image[x, y];
                if (dark == isDark)
                {
                    length++;
                    continue;
                }

                runs.AsSpan(1).CopyTo(runs);
                runs[4] = length;
                known++;
                if (isDark && known >= 5 && foundPatternCross(runs))
                    Note(runs, y, x);
                (isDark, length) = (dark, 1);
            }
        }

        return [.. _centres.Where(static one => one.Times >= 2).OrderByDescending(static one => one.Times).Take(MostUsed)
            .Select(static one => one.Pattern)];
    }

    /// <summary>Has the base class check the square across and down, and counts how often each was found.</summary>
    private void Note(int[] runs, int y, int x)
    {
        if (!handlePossibleCenter([.. runs], y, x))
            return;
        var centres = PossibleCenters;
        for (var index = 0; index < centres.Count; index++)
        {
            if (index == _centres.Count)
                _centres.Add((centres[index], 1));
            else if (!ReferenceEquals(centres[index], _centres[index].Pattern))
                _centres[index] = (centres[index], _centres[index].Times + 1);
        }
    }
}
