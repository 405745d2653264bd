namespace Loadmark.Core.Nameplates.Reading;

/// <summary>One token of a label.</summary>
/// <param name="Sign">What it is, from <see cref="Nameplates.Reading.Sign"/>.</param>
/// <param name="Start">Index of its first character.</param>
/// <param name="End">Index just past its last character.</param>
/// <param name="Spaced">Whether white space stands before it.</param>
internal record struct Token(char Sign, int Start, int End, bool Spaced)
{
    /// <summary>A number's value; a unit's factor to the coherent unit; which way a polarity drawing shows; else 0.</summary>
    public decimal Value { get; set; }

    /// <summary>The other way to take a number whose comma or space may group thousands; 0 when there is none.</summary>
    public decimal Other { get; set; }

    /// <summary>Whether it became a part of the reading.</summary>
    public bool Understood { get; set; }

    /// <summary>Its characters' count.</summary>
    public readonly int Length => End - Start;
}
