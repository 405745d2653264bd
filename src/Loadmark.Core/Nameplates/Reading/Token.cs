using System.Runtime.InteropServices;

namespace Loadmark.Core.Nameplates.Reading;

/// <summary>A piece of a label's text.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct Token
{
    public TokenKind Kind;
    public WordMeaning Meaning;

    /// <summary>White space, a line end or the start of the text stands before it.</summary>
    public bool SpaceBefore;

    /// <summary>Something understood it.</summary>
    public bool IsTaken;

    /// <summary>The comma in the number may group thousands.</summary>
    public bool Grouping;

    public int Start;
    public int Length;

    /// <summary>The number, or the factor of a unit to its SI unit.</summary>
    public decimal Value;

    /// <summary>It is the sign @, or the word "at".</summary>
    public bool IsAt;

    public readonly int End => Start + Length;

    public readonly Place Place => new(Start, Length);

    public readonly bool Is(WordMeaning meaning) => Kind == TokenKind.Word && Meaning == meaning;
}
