namespace Loadmark.Core.Nameplates.Reading;

/// <summary>What sort of thing a token is.</summary>
internal enum TokenKind : byte
{
    /// <summary>A number without sign.</summary>
    Number,

    /// <summary>A run of letters; its meaning is looked up.</summary>
    Word,

    /// <summary>A dash or minus sign of any kind.</summary>
    Dash,

    /// <summary>A tilde: alternating current after a voltage, a range between numbers.</summary>
    Tilde,

    /// <summary>The symbol of direct current, or an equals sign.</summary>
    DirectSign,

    /// <summary>The symbol of alternating current other than a tilde.</summary>
    AlternatingSign,

    /// <summary>A solidus.</summary>
    Slash,

    /// <summary>A comma that is no decimal comma.</summary>
    Comma,

    /// <summary>A semicolon.</summary>
    Semicolon,

    /// <summary>A colon.</summary>
    Colon,

    /// <summary>A plus sign.</summary>
    Plus,

    /// <summary>A multiplication sign or asterisk.</summary>
    Times,

    /// <summary>Two or more full stops, or an ellipsis.</summary>
    Dots,

    /// <summary>An opening bracket.</summary>
    Open,

    /// <summary>A closing bracket.</summary>
    Close,

    /// <summary>Two inch marks or a quotation mark.</summary>
    Quote,

    /// <summary>The end of a line.</summary>
    LineEnd,

    /// <summary>Punctuation that carries no meaning here.</summary>
    Punctuation,

    /// <summary>A piece that is no figure although it has digits: a model or serial number.</summary>
    Junk,
}
