using System.Security.Cryptography;
using System.Text;
using Loadmark.Release.Licences;

namespace Loadmark.Release;

/// <summary>The notices of others' work, which a release carries.</summary>
public static class NoticesText
{
    private const string Rule = "================================================================================";

    /// <summary>The whole text, the same for the same packages.</summary>
    /// <param name="inventory">What the release holds; nothing stands against it.</param>
    public static string Of(Inventory inventory)
    {
        var text = new StringBuilder();
        text.Append("""
            Others' work in Loadmark

            Loadmark is under the MIT licence (see LICENSE). It holds the packages and the parts
            within packages that are listed here, each under its own licence. The texts of all of
            these licences stand at the end; the copyright lines that they speak of are those
            listed here. Nothing was changed in any of this work. The source of each is where
            the list says; the program's own folder holds no source of theirs.

            This file is made from the packages by tools/Loadmark.Release, and not edited.

            """.ReplaceLineEndings("\n"));
        var licences = new SortedSet<string>(StringComparer.Ordinal);
        Heading(text, "Packages");
        foreach (var package in inventory.Shipped)
        {
            var taken = Inventory.LicencesOf(package);
            licences.UnionWith(taken);
            var under = string.Join(" and ", taken);
            Entry(text, $"{package.Name} {package.Version}", under == package.Licence ? under : $"{under} (of {package.Licence})", package.Copyright, package.Source);
        }

        Heading(text, "Parts within packages");
        foreach (var part in inventory.Parts.Where(static one => !one.Own).OrderBy(static one => one.Package, StringComparer.Ordinal).ThenBy(static one => one.Name, StringComparer.Ordinal))
        {
            licences.Add(part.Licence!);
            Entry(text, $"{part.Name}{(part.Version is null ? "" : $" {part.Version}")}, in {part.Package}", part.Licence!, part.Copyright, part.Source);
        }

        AddCarried(text, inventory);
        foreach (var licence in licences)
        {
            Heading(text, $"The text of {licence}");
            text.Append(LicenceTexts.Of(licence)!.ReplaceLineEndings("\n").TrimEnd()).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>The notices that packages carry themselves, each text once.</summary>
    private static void AddCarried(StringBuilder text, Inventory inventory)
    {
        var carried = inventory.Shipped.SelectMany(static package => package.Notices.Select(file => (Package: package, Text: Normal(File.ReadAllText(file)))))
            .GroupBy(static one => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(one.Text))));
        foreach (var same in carried)
        {
            Heading(text, $"Carried by {string.Join(", ", same.Select(static one => $"{one.Package.Name} {one.Package.Version}").Distinct())}");
            text.Append(same.First().Text);
        }
    }

    private static string Normal(string text) =>
        string.Join('\n', text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n').Select(static line => line.TrimEnd())).Trim('\n') + "\n";

    private static void Heading(StringBuilder text, string words) => text.Append('\n').Append(Rule).Append('\n').Append(words).Append('\n').Append(Rule).Append("\n\n");

    private static void Entry(StringBuilder text, string name, string licence, string? copyright, string? source)
    {
        text.Append(name).Append("\n    ").Append(licence).Append('\n');
        foreach (var line in (string?[])[copyright, source])
        {
            if (line is not null)
                text.Append("    ").Append(line.ReplaceLineEndings(" ")).Append('\n');
        }
    }
}
