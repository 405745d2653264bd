using System.Collections.Immutable;

namespace Loadmark.Planning.Cutting;

/// <summary>What is to be cut, with alike pieces and alike reels counted together, in whole micrometres.</summary>
internal sealed class CuttingProblem
{
    /// <summary>Groups pieces and reels.</summary>
    /// <exception cref="ArgumentException">A length is not over zero or too large, or a count or the cut's loss is below zero.</exception>
    public CuttingProblem(IReadOnlyList<CutPiece> pieces, IReadOnlyList<StockReel> reels, CuttingOptions options)
    {
        Require(pieces.All(static piece => IsLength(piece.Length)), "A piece's length is not over zero, or too large.", nameof(pieces));
        Require(reels.All(static reel => IsLength(reel.Length)), "A reel's length is not over zero, or too large.", nameof(reels));
        Require(reels.All(static reel => reel.Count is null or >= 0), "There are fewer than no reels.", nameof(reels));
        Require(options.CutLoss == Metres.Zero || IsLength(options.CutLoss), "What a cut takes is below zero.", nameof(options));

        CutLoss = CuttingUnits.Taken(options.CutLoss);
        Loss = options.CutLoss;
        Stock =
        [
            .. reels.GroupBy(static reel => CuttingUnits.Had(reel.Length)).Select(group => new StockKind(
                group.Key,
                group.Key + CutLoss,
                (int)group.Sum(reel => Math.Min(reel.Count ?? pieces.Count, (long)pieces.Count)),
                [.. group])),
        ];
        Stock = [.. Stock.Where(static stock => stock.Most > 0).Select(stock => stock with { Most = Math.Min(stock.Most, pieces.Count) })];
        var longest = Stock.Select(static stock => stock.Capacity).DefaultIfEmpty().Max();
        Impossible = [.. pieces.Where(piece => SizeOf(piece) > longest)];
        Kinds =
        [
            .. pieces.Where(piece => SizeOf(piece) <= longest).GroupBy(SizeOf).OrderByDescending(static group => group.Key)
                .Select(static group => new PieceKind(group.Key, [.. group])),
        ];
        var places = Kinds.Select(static (kind, place) => (kind.Size, place)).ToDictionary();
        InOrder = [.. pieces.Select(SizeOf).Where(places.ContainsKey).Select(size => places[size])];
        Unit = CuttingUnits.CommonDivisor(Kinds.Select(static kind => kind.Size));
        TotalSize = Kinds.Sum(static kind => kind.Size * kind.Count);
    }

    /// <summary>The pieces that some reel is long enough for, by their length, the longest first.</summary>
    public ImmutableArray<PieceKind> Kinds { get; }

    /// <summary>The kinds of the pieces in the order in which they were given, by their place.</summary>
    public ImmutableArray<int> InOrder { get; }

    /// <summary>The kinds of all pieces by their place, the longest first.</summary>
    public IEnumerable<int> LongestFirst => Kinds.SelectMany(static (kind, place) => Enumerable.Repeat(place, kind.Count));

    /// <summary>The reels by their length, in the order in which they were given; those of which there are none are left out.</summary>
    public ImmutableArray<StockKind> Stock { get; }

    /// <summary>The pieces that no reel is long enough for.</summary>
    public ImmutableArray<CutPiece> Impossible { get; }

    /// <summary>What a cut takes away, in micrometres, rounded up.</summary>
    public long CutLoss { get; }

    /// <summary>What a cut takes away, as it was given.</summary>
    public Metres Loss { get; }

    /// <summary>The largest length of which every piece with its cut is a multiple, in micrometres.</summary>
    public long Unit { get; }

    /// <summary>All pieces with their cuts, in micrometres.</summary>
    public long TotalSize { get; }

    /// <summary>What a piece takes with its cut, in micrometres.</summary>
    public long SizeOf(CutPiece piece) => CuttingUnits.Taken(piece.Length) + CutLoss;

    private static bool IsLength(Metres length) => length.Value is > 0 and <= CuttingUnits.MostMetres;

    private static void Require(bool isMet, string message, string name)
    {
        if (!isMet)
            throw new ArgumentException(message, name);
    }
}
