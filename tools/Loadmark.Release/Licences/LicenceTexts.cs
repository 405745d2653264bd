namespace Loadmark.Release.Licences;

/// <summary>The whole texts of the licences, as the SPDX licence list has them.</summary>
public static class LicenceTexts
{
    /// <summary>The text of a licence.</summary>
    /// <param name="identifier">Its SPDX identifier.</param>
    /// <returns>The text; null where it is not here.</returns>
    public static string? Of(string identifier)
    {
        using var stream = typeof(LicenceTexts).Assembly.GetManifestResourceStream($"texts/{identifier}");
        if (stream is null)
            return null;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
