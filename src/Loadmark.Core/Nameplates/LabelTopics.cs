namespace Loadmark.Core.Nameplates;

/// <summary>What a label can speak of in words or drawings; for those of its words that were not understood.</summary>
[Flags]
public enum LabelTopics
{
    /// <summary>No topic.</summary>
    None = 0,

    /// <summary>Direct or alternating.</summary>
    Form = 1,

    /// <summary>Which contact of the plug is positive.</summary>
    Polarity = 2,

    /// <summary>Which side is joined to ground.</summary>
    Ground = 4,

    /// <summary>The plug and its size.</summary>
    Plug = 8,

    /// <summary>Whether the output is regulated.</summary>
    Regulation = 16,
}
