using Loadmark.Planning.Cutting;

namespace Loadmark.Planning.Tests.Cutting;

/// <summary>The best way of cutting by trying every one: each piece on each opened reel, on a new one, or left over.</summary>
internal sealed class CuttingOracle(IReadOnlyList<CutPiece> pieces, IReadOnlyList<StockReel> reels, decimal cutLoss)
{
    private readonly List<(StockReel Reel, List<decimal> Pieces)> _opened = [];
    private readonly decimal[] _lengths = [.. pieces.Select(static piece => piece.Length.Value)];
    private (int, decimal, decimal, int, decimal)? _best;

    /// <summary>The levels of the objective, as <see cref="CutAssert.Levels"/> gives them.</summary>
    public (int LeftOver, decimal MetresOver, decimal Opened, int Reels, decimal NoOffcut) Best()
    {
        Try(0, []);
        return _best!.Value;
    }

    private void Try(int piece, List<decimal> over)
    {
        if (piece == _lengths.Length)
        {
            var levels = (
                over.Count, over.Sum(), _opened.Sum(static one => one.Reel.Length.Value), _opened.Count,
                -_opened.Select(one => Math.Max(0, one.Reel.Length.Value - one.Pieces.Sum(length => length + cutLoss))).Prepend(0).Max());
            if (_best is not { } best || levels.CompareTo(best) < 0)
                _best = levels;
            return;
        }

        var length = _lengths[piece];
        if (!reels.Any(reel => reel.Count != 0 && reel.Length.Value >= length))
        {
            Try(piece + 1, over);
            return;
        }

        Try(piece + 1, [.. over, length]);
        foreach (var (reel, cut) in _opened.ToList())
        {
            if (cut.Sum() + length + (cut.Count * cutLoss) > reel.Length.Value)
                continue;
            cut.Add(length);
            Try(piece + 1, over);
            cut.RemoveAt(cut.Count - 1);
        }

        foreach (var reel in reels.Where(reel => reel.Length.Value >= length && _opened.Count(one => one.Reel == reel) < (reel.Count ?? int.MaxValue)))
        {
            _opened.Add((reel, [length]));
            Try(piece + 1, over);
            _opened.RemoveAt(_opened.Count - 1);
        }
    }
}
