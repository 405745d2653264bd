using Loadmark.Files;
using Loadmark.Serving;
using Loadmark.Storage;

namespace Loadmark.Sources;

/// <summary>Rigs from files on disk.</summary>
/// <param name="environment">Reads the environment, which may tell where the gear library is.</param>
/// <param name="data">The folder of the gear library as typed; null where none was.</param>
internal sealed class RigFileSource(Func<string, string?> environment, string? data) : IRigSource
{
    private readonly KeptGear _gear = new(PageOptions.FolderFrom(data, environment));

    /// <inheritdoc/>
    public IGearLookup? Library => _gear.IsThere ? _gear : null;

    /// <inheritdoc/>
    public RigReading Read(string path)
    {
        try
        {
            return RigFileReader.ReadFile(path, Library);
        }
        catch (StorageException fault)
        {
            return new RigReading(null, [new FileError(path, 1, 1, $"it takes gear from the library, which cannot be read. {fault.Message}")]);
        }
    }

    /// <inheritdoc/>
    public IRigSource KeptIn(string? folder) => folder is null ? this : new RigFileSource(environment, folder);
}
