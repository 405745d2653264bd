using Loadmark.Release;
using Loadmark.Release.Licences;
using Loadmark.Release.Packages;

namespace Loadmark.Tests;

/// <summary>Others' work in a release: none of it is unfit or untold, and the files that tell of it are what the packages say.</summary>
public sealed class LicenceTests
{
    private static readonly Inventory Ours = Inventory.Of(Repository.Root);

    [Fact]
    public void Nothing_stands_against_a_release() => Assert.Empty(Ours.Faults);

    [Fact]
    public void The_files_are_what_the_packages_say()
    {
        foreach (var (path, text) in ReleaseFiles.Make(Repository.Root, Ours))
            Assert.True(File.ReadAllText(Repository.PathOf(path)) == text, $"{path} is stale. Run: dotnet run --project tools/Loadmark.Release");
    }

    [Theory]
    [InlineData("GPL-3.0-only", "is under GPL-3.0-only, which is not allowed in a release")]
    [InlineData("AGPL-3.0-or-later", "is under AGPL-3.0-or-later, which is not allowed in a release")]
    [InlineData("Made-Up-1.0", "is under Made-Up-1.0, which is not allowed in a release")]
    [InlineData("MIT AND GPL-2.0-only", "not allowed in a release")]
    [InlineData("GPL-2.0-only WITH Classpath-exception-2.0", "not allowed in a release")]
    [InlineData("(MIT", "not allowed in a release")]
    [InlineData("MIT-0", "is under MIT-0, which is not allowed in a release")]
    [InlineData("", "not allowed in a release")]
    [InlineData(null, "gives no SPDX expression of its licence, but https://example.org/licence")]
    public void A_package_of_an_unknown_or_unfit_licence_is_named(string? licence, string fault)
    {
        var found = Assert.Single(new Inventory([Invented(licence)], []).Faults);
        Assert.StartsWith("Invented 1.2.3 ", found, StringComparison.Ordinal);
        Assert.Contains(fault, found, StringComparison.Ordinal);
    }

    [Fact]
    public void A_package_that_tells_nothing_of_its_licence_is_named() =>
        Assert.Contains("but nothing at all", Assert.Single(new Inventory([Invented(null) with { OtherLicence = null }], []).Faults), StringComparison.Ordinal);

    [Theory]
    [InlineData("MS-PL OR Apache-2.0", "Apache-2.0")]
    [InlineData("(GPL-2.0-only OR MIT) AND Zlib", "MIT,Zlib")]
    [InlineData("GPL-2.0-only AND MIT OR Zlib", "Zlib")]
    public void Of_several_licences_one_that_is_allowed_is_taken(string expression, string taken)
    {
        Assert.Equal(taken.Split(','), LicenceExpression.Choose(expression, AllowedLicences.Shipped.ContainsKey));
        Assert.Empty(new Inventory([Invented(expression)], []).Faults);
    }

    [Fact]
    public void Every_licence_that_is_allowed_in_a_release_has_its_text() =>
        Assert.All(AllowedLicences.Shipped.Keys, static licence => Assert.True(LicenceTexts.Of(licence)?.Length > 200, licence));

    [Fact]
    public void A_native_library_that_nobody_told_of_is_named()
    {
        var package = Invented("MIT") with { ForeignFiles = ["runtimes/linux-x64/native/libstranger.so"] };
        Assert.Contains("Invented 1.2.3 holds runtimes/linux-x64/native/libstranger.so", Assert.Single(new Inventory([package], []).Faults), StringComparison.Ordinal);
        Assert.Empty(new Inventory([package], [Within("libstranger.*", "MIT")]).Faults);
    }

    [Fact]
    public void A_part_that_is_gone_or_of_another_version_or_unfit_is_named()
    {
        var package = Invented("MIT") with { ForeignFiles = ["native/libstranger.so"] };
        Assert.Contains(new Inventory([package], [Within("*", "MIT"), Within("libgone.*", "MIT")]).Faults, static fault => fault.Contains("is in no file of Invented any more", StringComparison.Ordinal));
        Assert.Contains("'9.9.9'", Assert.Single(new Inventory([package], [Within("*", "MIT") with { Told = "9.9.9", Version = "9.9.9" }]).Faults), StringComparison.Ordinal);
        Assert.Contains("is under LGPL-3.0-only", Assert.Single(new Inventory([package], [Within("*", "LGPL-3.0-only")]).Faults), StringComparison.Ordinal);
    }

    /// <summary>Why each package is here is said once, and nothing is said of one that is not.</summary>
    [Fact]
    public void Every_package_that_a_project_refers_to_has_its_reason()
    {
        var pinned = System.Xml.Linq.XDocument.Load(Repository.PathOf("Directory.Packages.props")).Descendants("PackageVersion")
            .Select(static one => one.Attribute("Include")?.Value).OfType<string>().Order(StringComparer.Ordinal);
        var told = File.ReadLines(Repository.PathOf("docs", "dependencies.md")).Where(static line => line.StartsWith("| ", StringComparison.Ordinal)).Skip(2)
            .Select(static line => line.Split('|')[1].Trim()).Where(static cell => !cell.Contains("Debian", StringComparison.Ordinal))
            .SelectMany(static cell => cell.Split(", ")).Order(StringComparer.Ordinal);
        Assert.Equal(pinned, told);
    }

    private static RestoredPackage Invented(string? licence) => new()
    {
        Name = "Invented",
        Version = "1.2.3",
        Licence = licence,
        OtherLicence = licence is null ? "https://example.org/licence" : null,
        Sha512 = "00",
        Folder = Path.Combine(Path.GetTempPath(), "invented-package"),
        IsShipped = true,
    };

    private static Part Within(string files, string licence) => new() { Package = "Invented", Name = "Stranger", Licence = licence, Copyright = "Nobody", Source = "https://example.org", Files = [files] };
}
