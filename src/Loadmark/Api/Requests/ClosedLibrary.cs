using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Parsing;
using Loadmark.Storage.Faults;

namespace Loadmark.Api.Requests;

/// <summary>Stands for a gear library that cannot be read: whoever takes something from it is told why, and others need not know.</summary>
/// <param name="fault">Why it cannot be read; thrown by every question.</param>
internal sealed class ClosedLibrary(StorageException fault) : IGearLookup
{
    /// <inheritdoc/>
    public Load? FindLoad(string tag) => Refuse<Load>();

    /// <inheritdoc/>
    public Supply? FindSupply(string tag) => Refuse<Supply>();

    /// <inheritdoc/>
    public IReadOnlyList<string> Near(GearKind kind, string tag) => Refuse<IReadOnlyList<string>>();

    private T Refuse<T>() => throw fault;
}
