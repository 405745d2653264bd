namespace Loadmark.Core.Nameplates.Reading;

/// <summary>What a word on a label means to the reader.</summary>
internal enum WordMeaning : byte
{
    /// <summary>Nothing the reader knows.</summary>
    Unknown,

    /// <summary>A unit of voltage.</summary>
    Volt,

    /// <summary>A unit of voltage with direct current: "VDC".</summary>
    VoltDirect,

    /// <summary>A unit of voltage with alternating current: "VAC".</summary>
    VoltAlternating,

    /// <summary>A unit of current.</summary>
    Ampere,

    /// <summary>A unit of power.</summary>
    Watt,

    /// <summary>A unit of frequency.</summary>
    Hertz,

    /// <summary>Millimetres: plug sizes.</summary>
    Millimetre,

    /// <summary>Millimetres with the multiplication sign run on: "5.5mmx2.1mm".</summary>
    MillimetreTimes,

    /// <summary>Inches.</summary>
    Inch,

    /// <summary>A unit of something that is no figure of a supply: ampere-hours, ohms, grams.</summary>
    ForeignUnit,

    /// <summary>The letter x between two sizes.</summary>
    Times,

    /// <summary>Direct current.</summary>
    Direct,

    /// <summary>Alternating current.</summary>
    Alternating,

    /// <summary>What follows goes in.</summary>
    Input,

    /// <summary>What follows comes out.</summary>
    Output,

    /// <summary>The inner contact.</summary>
    Centre,

    /// <summary>The outer contact.</summary>
    Sleeve,

    /// <summary>A barrel: the outer contact beside a sign, a plug beside a size.</summary>
    Barrel,

    /// <summary>The letter C: the inner contact where a sign is joined to it.</summary>
    LetterC,

    /// <summary>Negative.</summary>
    Negative,

    /// <summary>Positive.</summary>
    Positive,

    /// <summary>The rest of "+ve" and "-ve".</summary>
    Ve,

    /// <summary>A plug, jack or socket.</summary>
    Plug,

    /// <summary>A jack of the audio sort: "mini", "jack".</summary>
    Jack,

    /// <summary>"to", between the ends of a range.</summary>
    To,

    /// <summary>"between", before the ends of a range.</summary>
    Between,

    /// <summary>"and", between the ends of a range after "between".</summary>
    And,

    /// <summary>"or", between alternatives.</summary>
    Or,

    /// <summary>"max".</summary>
    Most,

    /// <summary>"typ".</summary>
    Typical,

    /// <summary>A word that belongs to figures and adds nothing: "current", "rated", "at".</summary>
    Filler,

    /// <summary>What follows is a model, serial or part number.</summary>
    NumberMark,
}
