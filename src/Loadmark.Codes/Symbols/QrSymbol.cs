using System.Collections.Immutable;
using QRCoder;

namespace Loadmark.Codes.Symbols;

/// <summary>
/// A QR code (ISO/IEC 18004) as modules, the quiet zone of four modules around it included: byte mode, error correction level L, which
/// restores 7 % of the codewords.
/// </summary>
/// <param name="Modules">How many modules it is wide and high.</param>
/// <param name="Bars">The dark modules, as bars that do not overlap: across, down, width and height, in modules.</param>
public sealed record QrSymbol(int Modules, ImmutableArray<(int X, int Y, int Width, int Height)> Bars)
{
    /// <summary>The modules of the quiet zone at each side (ISO/IEC 18004, 6.3.8; the clause from memory).</summary>
    public const int QuietZone = 4;

    /// <summary>The symbol of what a code holds. Equal bytes make equal symbols.</summary>
    /// <param name="bytes">The bytes, at most <see cref="Packing.TextCodes.MostCodeBytes"/>.</param>
    public static QrSymbol Of(byte[] bytes)
    {
        using var code = QRCodeGenerator.GenerateQrCode(bytes, QRCodeGenerator.ECCLevel.L);
        var rows = code.ModuleMatrix;
        var bars = ImmutableArray.CreateBuilder<(int X, int Y, int Width, int Height)>();
        var done = new bool[rows.Count, rows.Count];
        for (var y = 0; y < rows.Count; y++)
        {
            for (var x = 0; x < rows.Count; x++)
            {
                if (!IsLeft(x, y))
                    continue;
                var width = 1;
                while (x + width < rows.Count && IsLeft(x + width, y))
                    width++;
                var height = 1;
                while (y + height < rows.Count && Enumerable.Range(x, width).All(at => IsLeft(at, y + height)))
                    height++;
                for (var row = y; row < y + height; row++)
                {
                    for (var column = x; column < x + width; column++)
                        done[row, column] = true;
                }

                bars.Add((x, y, width, height));
            }
        }

        return new QrSymbol(rows.Count, bars.ToImmutable());

        bool IsLeft(int x, int y) => rows[y][x] && !done[y, x];
    }
}
