namespace Loadmark.Files.Keys;

/// <summary>What kind of value a key takes. The schema follows from it; the readers take the same.</summary>
internal enum ValueForm
{
    /// <summary>Any text.</summary>
    Text,

    /// <summary>A number with its unit.</summary>
    Figure,

    /// <summary>A number with its unit, or without it, because the key's name says it already.</summary>
    FigureOrNumber,

    /// <summary>One of the key's words.</summary>
    Word,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>A whole number within the key's range.</summary>
    Number,

    /// <summary>A share: "10 %" or 0.1.</summary>
    Share,

    /// <summary>One text, or a list of texts.</summary>
    OneOrList,

    /// <summary>A list of texts.</summary>
    List,

    /// <summary>A list of groups of keys.</summary>
    GroupList,

    /// <summary>Names, each with a group of keys.</summary>
    NamedGroups,

    /// <summary>Names, each with a text or a group of keys; the text may be left out where the key says so.</summary>
    NamedTextsOrGroups,
}
