namespace Loadmark.Testing;

/// <summary>The repository the tests run from.</summary>
public static class Repository
{
    /// <summary>Its folder.</summary>
    public static string Root { get; } = Find();

    /// <summary>A file or folder in it.</summary>
    /// <param name="parts">Its path below the repository's folder, folder by folder.</param>
    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    /// <summary>A rig or list of the examples.</summary>
    /// <param name="name">The file's name.</param>
    public static string Example(string name) => PathOf("examples", name);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Loadmark.slnx")))
                return folder.FullName;
        }

        throw new InvalidOperationException("The tests must run from within the repository.");
    }
}
