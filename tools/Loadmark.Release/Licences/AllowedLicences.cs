namespace Loadmark.Release.Licences;

/// <summary>The licences that others' work may have that we ship or work with, by their SPDX identifiers. The one place where they stand.</summary>
public static class AllowedLicences
{
    /// <summary>What may be in a release, and what each asks of it.</summary>
    public static IReadOnlyDictionary<string, string> Shipped { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["Apache-2.0"] = "its text, and the notices that the work carries",
        ["BSD-2-Clause"] = "its text and the copyright lines",
        ["BSD-3-Clause"] = "its text and the copyright lines",
        ["BSL-1.0"] = "nothing of a release without source; its text is given all the same",
        ["EPL-2.0"] = "its text, and where the source is; the libraries are files of their own, unchanged",
        ["FTL"] = "its text, and that the FreeType project is named",
        ["IJG"] = "its text, and that the work is said to be based in part on that of the Independent JPEG Group",
        ["MIT"] = "its text and the copyright lines",
        ["MPL-2.0"] = "its text, and where the source is; the files under it are unchanged",
        ["OFL-1.1"] = "its text and the copyright line; a font under it is sold with a program, never alone",
        ["Unicode-3.0"] = "its text and the copyright line",
        ["Zlib"] = "nothing of a release without source; its text is given all the same",
        ["blessing"] = "nothing: the work is in the public domain",
        ["libpng-2.0"] = "its text and the copyright lines",
        ["bzip2-1.0.6"] = "its text and the copyright line",
    };

    /// <summary>What only builds and tests may have besides: nothing of it leaves the house.</summary>
    public static IReadOnlySet<string> InHouse { get; } = new HashSet<string>(Shipped.Keys, StringComparer.Ordinal) { "MIT-0", "MS-PL" };
}
