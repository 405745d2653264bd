namespace Loadmark.Tests;

/// <summary>
/// Output whose exact text is kept in a file. LOADMARK_UPDATE_EXPECTED=1 writes the files anew; look at the difference
/// before it is committed.
/// </summary>
internal static class Expected
{
    public static void Matches(string name, string actual)
    {
        var path = Repository.PathOf("tests", "Loadmark.Tests", "Expected", name);
        if (Environment.GetEnvironmentVariable("LOADMARK_UPDATE_EXPECTED") == "1")
            File.WriteAllText(path, actual);

        Assert.Equal(File.ReadAllText(path), actual);
    }
}
