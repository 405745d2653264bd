namespace Loadmark.Workshop.DataFolders;

/// <summary>Where the user's rigs and gear are kept.</summary>
public static class DataFolder
{
    /// <summary>The folder where rigs are kept: as asked, else as the environment says, else in the user's own data.</summary>
    /// <param name="asked">What was asked for on the command line; null for nothing.</param>
    /// <param name="environment">Reads the environment.</param>
    public static string From(string? asked, Func<string, string?> environment)
    {
        ArgumentNullException.ThrowIfNull(environment);
        if (!string.IsNullOrEmpty(asked))
            return Path.GetFullPath(asked);
        if (environment("LOADMARK_DATA") is { Length: > 0 } set)
            return Path.GetFullPath(set);
        var own = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        return Path.Combine(own.Length == 0 ? Path.GetTempPath() : own, "loadmark");
    }
}
