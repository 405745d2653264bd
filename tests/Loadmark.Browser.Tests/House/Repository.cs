using System.Reflection;

namespace Loadmark.Browser.Tests.House;

/// <summary>The repository the tests run from.</summary>
internal static class Repository
{
    /// <summary>Its folder.</summary>
    public static string Root { get; } = Find();

    /// <summary>The program that is tested, as it was built with the tests.</summary>
    public static string Program { get; } = PathOf(
        typeof(Repository).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(static data => data.Key == "Program").Value!);

    /// <summary>The example rigs and lists.</summary>
    public static string Example(string name) => PathOf("examples", name);

    /// <summary>A file in it.</summary>
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
