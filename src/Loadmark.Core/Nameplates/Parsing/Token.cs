namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>One token of a label.</summary>
/// <param name="Sign">What it is, from <see cref="Nameplates.Parsing.Sign"/>.</param>
/// <param name="Start">Index of its first character.</param>
/// <param name="End">Index just past its last character.</param>
/// <param name="Spaced">Whether white space stands before it.</param>
internal record struct Token(char Sign, int Start, int End, bool Spaced)
{
    /// <summary>A number's value; a unit's factor to the coherent unit; which way a polarity drawing shows; else 0.</summary>
    public decimal Value { get; set; }

    /// <summary>The other way to take a number whose comma or space may group thousands; 0 when there is none.</summary>
    public decimal Other { get; set; }

    /// <summary>Whether the token is a number with a gap in it ("3 50 mA"): what was printed cannot be told.</summary>
    public bool Broken { get; set; }

    /// <summary>Whether the token is the voltage on either side of a transformer's centre tap ("12-0-12 V").</summary>
    public bool Tapped { get; set; }

    /// <summary>Whether letters stand in the token for the digits they look like ("l00mA").</summary>
    public bool Doubtful { get; set; }

    /// <summary>Whether the token is a unit of apparent power, VA, which is none of power.</summary>
    public bool IsApparent { get; set; }

    /// <summary>Whether the token is the number of a voltage with nothing drawn ("14 V no load").</summary>
    public bool IsUnloaded { get; set; }

    /// <summary>What the token speaks of, should it stay unread.</summary>
    public LabelTopics Topic { get; set; }

    /// <summary>Whether the token became a part of the reading.</summary>
    public bool Understood { get; set; }

    /// <summary>How many characters of the label the token takes.</summary>
    public readonly int Length => End - Start;
}
