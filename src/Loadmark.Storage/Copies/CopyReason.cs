namespace Loadmark.Storage.Copies;

/// <summary>Why the program made a copy of what is kept.</summary>
public enum CopyReason
{
    /// <summary>The first of a day on which the store was used.</summary>
    Day,

    /// <summary>The store was about to be brought to a newer form.</summary>
    BeforeUpgrade,

    /// <summary>A backup was about to take the place of what was kept.</summary>
    BeforeRestore,
}
