namespace Loadmark.Files.Editing;

/// <summary>How large a piece of the file is written anew where anything in it differs.</summary>
internal enum EditScope
{
    /// <summary>The value of one key of a load, supply, lead or feed.</summary>
    Keys,

    /// <summary>One load, supply, lead or feed.</summary>
    Entries,

    /// <summary>The value of one of the rig's own keys, such as all loads.</summary>
    Sections,
}
