using Loadmark.Files;

namespace Loadmark.Sources;

/// <summary>Rigs from files on disk.</summary>
internal sealed class RigFileSource : IRigSource
{
    /// <inheritdoc/>
    public RigReading Read(string path) => RigFileReader.ReadFile(path);
}
