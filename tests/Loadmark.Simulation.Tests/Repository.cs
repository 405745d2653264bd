namespace Loadmark.Simulation.Tests;

/// <summary>The repository the tests run from.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

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
