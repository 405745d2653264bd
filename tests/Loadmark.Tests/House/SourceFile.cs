using System.Text.RegularExpressions;

namespace Loadmark.Tests.House;

/// <summary>A file of source below <c>src</c>.</summary>
/// <param name="path">Where it is, below <c>src</c>, with slashes: <c>Loadmark.Core/Rigs/Rig.cs</c>.</param>
/// <param name="lines">Its lines.</param>
internal sealed partial class SourceFile(string path, IReadOnlyList<string> lines)
{
    /// <summary>Where it is, below <c>src</c>, with slashes.</summary>
    public string Path => path;

    /// <summary>Its lines.</summary>
    public IReadOnlyList<string> Lines => lines;

    /// <summary>Its name without the folders.</summary>
    public string Name => path[(path.LastIndexOf('/') + 1)..];

    /// <summary>The project that it is of.</summary>
    public string Project => path[..path.IndexOf('/', StringComparison.Ordinal)];

    /// <summary>Whether a tool wrote it, to bring old stores up to date; such files are counted apart.</summary>
    public bool IsMigration => path.Contains("/Migrations/", StringComparison.Ordinal);

    /// <summary>The lines, from 1, that are wider than a screen beside another: over 140 columns.</summary>
    public IEnumerable<int> WideLines => lines.Index().Where(static line => line.Item.Length > 140).Select(static line => line.Index + 1);

    /// <summary>The namespace that it declares; null where it declares none, as pages and top-level statements do.</summary>
    public string? Namespace { get; } = Matches(lines, NamespaceLine()).FirstOrDefault();

    /// <summary>The namespaces that it names in <c>using</c> lines.</summary>
    public IReadOnlyList<string> Usings { get; } = [.. Matches(lines, UsingLine())];

    private static IEnumerable<string> Matches(IEnumerable<string> lines, Regex form) =>
        lines.Select(line => form.Match(line)).Where(match => match.Success).Select(match => match.Groups["name"].Value);

    [GeneratedRegex(@"^namespace (?<name>[\w.]+)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex NamespaceLine();

    [GeneratedRegex(@"^using (?<name>[\w.]+);", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex UsingLine();
}
