using System.Buffers;

namespace Loadmark.Core.Nameplates.Reading;

/// <summary>A growing list of tokens in a rented array; asking past its ends gives a token of nothing.</summary>
internal sealed class TokenList : IDisposable
{
    private Token[] _items = ArrayPool<Token>.Shared.Rent(64);

    public int Count { get; private set; }

    public ref Token this[int index] => ref _items[index];

    public ref Token Add()
    {
        if (Count == _items.Length)
        {
            var larger = ArrayPool<Token>.Shared.Rent(Count * 2);
            _items.AsSpan(0, Count).CopyTo(larger);
            ArrayPool<Token>.Shared.Return(_items);
            _items = larger;
        }

        return ref _items[Count++];
    }

    /// <summary>The kind at <paramref name="index"/>; a line end past either end of the list.</summary>
    public TokenKind Kind(int index) => (uint)index < (uint)Count ? _items[index].Kind : TokenKind.LineEnd;

    /// <summary>The meaning of the word at <paramref name="index"/>; unknown for anything that is no word.</summary>
    public WordMeaning Meaning(int index) =>
        (uint)index < (uint)Count && _items[index].Kind == TokenKind.Word ? _items[index].Meaning : WordMeaning.Unknown;

    /// <summary>Marks tokens as understood, from the first to before the second index.</summary>
    public void Take(int from, int to)
    {
        for (var index = from; index < to; index++)
            _items[index].IsTaken = true;
    }

    /// <summary>The place from the first to before the second token.</summary>
    public Place Place(int from, int to) => new(_items[from].Start, _items[to - 1].End - _items[from].Start);

    public void Dispose()
    {
        ArrayPool<Token>.Shared.Return(_items);
        _items = [];
    }
}
