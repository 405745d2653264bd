using Loadmark.Storage.Acceptances;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;
using Loadmark.Storage.Sessions;
using Loadmark.Storage.Sqlite;

namespace Loadmark.Storage;

/// <summary>
/// Everything that is kept, in the file <c>loadmark.db</c> of one folder. Safe to call from many threads at once, and several programs may
/// use one folder at the same time. A change that has returned is on the disk.
/// </summary>
public sealed class Store : IDisposable
{
    /// <summary>The name of the file.</summary>
    public const string FileName = DatabaseFile.FileName;

    private readonly Access _access;

    /// <summary>A store that is not open yet. Nothing is read or made before <see cref="OpenAsync"/>.</summary>
    /// <param name="folder">The folder; made when it is not there.</param>
    /// <param name="clock">Tells when a change was made.</param>
    /// <param name="mentions">Names the gear that a rig's text has; null where nobody asks which rig has which gear.</param>
    public Store(string folder, TimeProvider clock, GearMentions? mentions = null)
        : this(new DatabaseFile(folder), clock, RigStore.EditsKept, mentions)
    {
    }

    internal Store(DatabaseFile file, TimeProvider clock, int editsKept, GearMentions? mentions = null)
    {
        _access = new Access(file, clock);
        var uses = new RigUses(mentions);
        Rigs = new RigStore(_access, clock, editsKept, uses);
        Gear = new GearLibrary(_access, clock, uses);
        Acceptances = new AcceptanceStore(_access, clock);
        Copies = new StoreCopies(file, clock);
    }

    /// <summary>The rigs, each with the edits that led to it.</summary>
    public RigStore Rigs { get; }

    /// <summary>The gear that the workshop knows.</summary>
    public GearLibrary Gear { get; }

    /// <summary>What was measured on finished rigs.</summary>
    public AcceptanceStore Acceptances { get; }

    /// <summary>Whether it is open: not before <see cref="OpenAsync"/>, and not after one that found a fault.</summary>
    public bool IsOpen => _access.IsOpen;

    /// <summary>Whether anything was changed since it was opened.</summary>
    public bool HasChanged => _access.HasChanged;

    /// <summary>Backups of everything, and restoring from one.</summary>
    public StoreCopies Copies { get; }

    /// <summary>
    /// Opens the store: makes folder and database when they are not there, for the user's eyes only; checks that the database is whole;
    /// brings an older one forward, after making a copy of it. To be called before anything else, and again after a fault is mended.
    /// </summary>
    /// <param name="cancellationToken">Gives up waiting.</param>
    /// <returns>What was found. A fault of the medium is told here, never thrown.</returns>
    public Task<StoreOpening> OpenAsync(CancellationToken cancellationToken = default) => _access.OpenAsync(cancellationToken);

    /// <summary>Lets go of the file. What was saved is on the disk before.</summary>
    public void Dispose() => _access.Dispose();
}
