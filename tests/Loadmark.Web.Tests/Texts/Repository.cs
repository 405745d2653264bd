namespace Loadmark.Web.Tests.Texts;

/// <summary>Where the sources are.</summary>
internal static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    private static string Find(string folder) =>
        File.Exists(Path.Combine(folder, "Loadmark.slnx")) ? folder
        : Find(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("There is no Loadmark.slnx above the tests."));
}
