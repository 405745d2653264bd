namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>The kinds of phrases of more than one token. A single token that is no phrase keeps its sign as its kind.</summary>
internal static class PhraseKind
{
    public const char Volts = 'V';
    public const char Amps = 'A';
    public const char Watts = 'E';
    public const char Hertz = 'H';

    /// <summary>Input, output or mains, with the numbers of the outlets meant.</summary>
    public const char Side = 'I';

    /// <summary>The numbers of outlets without a word for output before them.</summary>
    public const char OutletIds = '4';

    /// <summary>How many outlets there are: "8", "8 x", "x 8".</summary>
    public const char OutletCount = '5';

    /// <summary>Ground with its sign, either first.</summary>
    public const char GroundSign = '7';

    /// <summary>"AC/DC adaptor": what the thing is called, not what it puts out.</summary>
    public const char Title = 'T';

    /// <summary>A contact with its sign, the contact first.</summary>
    public const char ContactSign = 'R';

    /// <summary>A contact with its sign, the sign first.</summary>
    public const char SignContact = 'r';

    /// <summary>The two diameters of a plug.</summary>
    public const char PlugSize = 'K';

    /// <summary>One diameter in millimetres, with the words for a connector around it.</summary>
    public const char Diameter = 'Q';

    /// <summary>A jack measured in inches.</summary>
    public const char InchJack = 'J';
}
