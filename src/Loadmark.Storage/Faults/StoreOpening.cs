namespace Loadmark.Storage.Faults;

/// <summary>How opening the store went.</summary>
public sealed record StoreOpening
{
    /// <summary>True when this opening made the database, so that it holds no rigs yet.</summary>
    public bool WasCreated { get; init; }

    /// <summary>
    /// What is to be said though the store is open: that it was made anew where backups show that there was something. Null for nothing.
    /// </summary>
    public string? Remark { get; init; }

    /// <summary>
    /// The file that the database was copied to before its older schema was brought forward; null when that was not needed.
    /// </summary>
    public string? Backup { get; init; }

    /// <summary>Why the store cannot be used; null when it is open.</summary>
    public StoreFault? Fault { get; init; }

    /// <summary>The fault in words for the user: what is wrong and what to do. Null when the store is open.</summary>
    public string? Trouble { get; init; }
}
