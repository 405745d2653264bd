namespace Loadmark.Web.Hosting;

/// <summary>A folder for the time of one answer, for the user's eyes only.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    /// <summary>The folder's path.</summary>
    public string Path { get; } = Directory.CreateTempSubdirectory("loadmark-").FullName;

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(Path, recursive: true);
}
