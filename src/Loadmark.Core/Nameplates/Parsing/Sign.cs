namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>
/// The alphabet a label is spelled in once it has been lexed: one character for each token, so that the grammar of
/// phrases is written over a short string ("nvdna" for "9 V DC 300 mA") instead of over the label's own characters.
/// </summary>
internal static class Sign
{
    public const char Number = 'n';
    public const char Volt = 'v';
    public const char Ampere = 'a';

    /// <summary>Watts and volt-amperes: the token tells which.</summary>
    public const char Watt = 'w';

    public const char Hertz = 'h';
    public const char Millimetre = 'm';
    public const char Inch = 'i';

    public const char Direct = 'd';
    public const char Alternating = 'c';
    public const char Tilde = '~';
    public const char Equal = '=';

    public const char Dash = '-';
    public const char Dots = '.';
    public const char To = 't';
    public const char And = '&';
    public const char Or = 'o';
    public const char Slash = '/';
    public const char Comma = ',';
    public const char Semicolon = ';';
    public const char NewLine = '|';
    public const char Colon = ':';
    public const char Times = 'x';
    public const char Plus = '+';
    public const char Open = '(';
    public const char Close = ')';

    /// <summary>Any other punctuation: understood as nothing but itself.</summary>
    public const char Point = ' ';

    public const char Centre = 'C';
    public const char Pin = 'p';
    public const char Sleeve = 'S';
    public const char Barrel = 'b';
    public const char Positive = 'P';
    public const char Negative = 'M';

    /// <summary>A polarity drawn with signs and lines; the token's value says what it shows.</summary>
    public const char Drawing = 'D';

    /// <summary>A word for a connector: plug, connector, coaxial.</summary>
    public const char Connector = 'k';

    /// <summary>The word jack, which is a connector and, at 3.5 mm, a kind of its own.</summary>
    public const char Jack = 'j';

    public const char Input = 'I';
    public const char Output = 'O';

    /// <summary>From what goes in to what comes out: "5 V -> 9 V".</summary>
    public const char Arrow = '>';
    public const char Mains = 'L';

    /// <summary>max, typ and the like: they say which of several figures one is.</summary>
    public const char Qualifier = 'y';

    /// <summary>Words that carry nothing of their own: power, rated, at.</summary>
    public const char Quiet = 'q';

    /// <summary>"@" or "at": ties a current to the voltage after it.</summary>
    public const char At = '@';

    /// <summary>Words of running text: only, the, of. They go with what they stand beside.</summary>
    public const char Filler = 'f';

    public const char Between = 'W';
    public const char Adaptor = 'z';

    /// <summary>Words after which an identifier follows: model, serial, class.</summary>
    public const char Name = 'N';

    public const char Fuse = 'F';

    /// <summary>OD and ID: which diameter of a connector a number is.</summary>
    public const char Diameter = 'e';

    /// <summary>Words that turn what follows into what the thing is not: not, never, except.</summary>
    public const char Not = '!';

    /// <summary>Words that say a current or power is not a rating: inrush, peak.</summary>
    public const char Aside = 's';

    /// <summary>Words that say a current or power is of all outputs together: total, combined.</summary>
    public const char Total = '9';

    /// <summary>Words that say figures are of each of several outlets.</summary>
    public const char Each = '6';

    /// <summary>The number or letter of an outlet.</summary>
    public const char Ids = '1';

    /// <summary>How many outlets there are.</summary>
    public const char Count = '8';

    /// <summary>Words for what a thing is doing while it draws a current: on, standby, bypass.</summary>
    public const char State = 'Y';

    /// <summary>A word for ground or earth.</summary>
    public const char Ground = 'B';

    /// <summary>A word that says that outlets are isolated.</summary>
    public const char Isolated = 'Z';

    /// <summary>Common, shared: beside ground or return, the opposite of isolated.</summary>
    public const char Common = '2';

    /// <summary>The return of outlets.</summary>
    public const char Return = '0';

    /// <summary>Words beside which a figure is not of the low-voltage supply; the token's value says which figures.</summary>
    public const char Foreign = '3';

    /// <summary>A word that says that a supply is regulated or stabilised.</summary>
    public const char Regulated = 'G';

    /// <summary>A word that says that a supply is not regulated.</summary>
    public const char Unregulated = 'g';

    /// <summary>"non" or "not" straight before regulated.</summary>
    public const char Un = 'u';

    /// <summary>Linear: either, unless another word tells.</summary>
    public const char Linear = 'l';

    /// <summary>A word that means nothing here.</summary>
    public const char Word = 'U';

    /// <summary>A piece of a model number or the like, in which no figure is to be found.</summary>
    public const char Identifier = 'X';

    public static bool IsUnit(char sign) => sign is Volt or Ampere or Watt or Hertz or Millimetre;

    /// <summary>Whether an unread piece may run over it: punctuation and words without meaning of their own.</summary>
    public static bool IsPlain(char sign) => sign is Dash or Dots or Slash or Comma or Semicolon or NewLine or Colon or Plus or Open
        or Close or Point or Tilde or Equal or Quiet or Diameter or At or Filler or Qualifier or And or Or or To or Between or Adaptor;
}
