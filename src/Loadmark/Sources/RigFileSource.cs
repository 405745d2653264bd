namespace Loadmark.Sources;

/// <summary>Reads rigs from rig files.</summary>
internal sealed class RigFileSource : IRigSource
{
    /// <inheritdoc/>
    public RigInput Read(string path) => throw new NotSupportedException("Rig files are read by Loadmark.Files, which is not joined yet.");
}
