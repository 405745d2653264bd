namespace Loadmark.Workshop.Sheets;

/// <summary>A part of a rig's sheet.</summary>
public enum SheetPart
{
    /// <summary>The single-line diagram.</summary>
    Diagram,

    /// <summary>The feed schedule: what feeds what, with figures and boxes for what is measured.</summary>
    Feeds,

    /// <summary>The leads to make.</summary>
    Leads,

    /// <summary>What is to be bought to build it.</summary>
    Shopping,

    /// <summary>Labels for both ends of each lead.</summary>
    Labels,

    /// <summary>What the rules have to say, with workings, and what was assumed.</summary>
    Findings,

    /// <summary>The first seconds after switch-on.</summary>
    StartUp,

    /// <summary>A page in plain words for who plays the rig.</summary>
    Player,

    /// <summary>The rig file itself, as codes for a camera.</summary>
    Codes,
}
