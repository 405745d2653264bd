namespace Loadmark.Files.Entry;

/// <summary>What a piece of a label that was not read is, as its owner says.</summary>
public enum UnreadMeaning
{
    /// <summary>What the thing is called.</summary>
    Name,

    /// <summary>What kind of load it is.</summary>
    Kind,

    /// <summary>Nothing that matters for its power.</summary>
    Nothing,
}
