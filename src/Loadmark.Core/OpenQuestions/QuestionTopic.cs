namespace Loadmark.Core.OpenQuestions;

/// <summary>What a question is about.</summary>
public enum QuestionTopic
{
    /// <summary>Which contact of the plug is positive.</summary>
    Polarity,

    /// <summary>Direct or alternating current.</summary>
    Form,

    /// <summary>The printed voltage.</summary>
    Voltage,

    /// <summary>How the switch of an outlet stands.</summary>
    Setting,

    /// <summary>Which side of a load's supply is its ground.</summary>
    Ground,

    /// <summary>Whether a supply holds its voltage whatever is drawn.</summary>
    Regulated,

    /// <summary>Whether each outlet of a supply has a return of its own.</summary>
    Isolated,

    /// <summary>Whether a load is digital.</summary>
    Kind,

    /// <summary>The printed current.</summary>
    Draw,

    /// <summary>The size of plugs: one question for the rig.</summary>
    Plug,
}
