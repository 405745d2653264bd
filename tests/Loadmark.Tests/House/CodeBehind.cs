namespace Loadmark.Tests.House;

/// <summary>The code that stands in pages and components themselves, which CONTRIBUTING.md keeps short.</summary>
internal static class CodeBehind
{
    /// <summary>The most lines of code that a component may have in itself.</summary>
    public const int MostLines = 15;

    /// <summary>
    /// How many lines the block <c>@code</c> of a component has, its own first and last among them; 0 where it has none. A member that is a
    /// fragment of markup (<c>=&gt;</c> at the end of its first line, a tag at the begin of its second) does not count: it can stand nowhere else.
    /// </summary>
    /// <param name="lines">The component's lines.</param>
    public static int LinesOf(IReadOnlyList<string> lines)
    {
        var begin = lines.ToList().FindIndex(static line => line.StartsWith("@code", StringComparison.Ordinal));
        if (begin < 0)
            return 0;
        var count = 0;
        for (var line = begin; line < lines.Count; line++)
        {
            if (line + 1 < lines.Count && lines[line + 1].TrimStart().StartsWith("@<", StringComparison.Ordinal))
            {
                while (line < lines.Count && !lines[line].EndsWith(">;", StringComparison.Ordinal))
                    line++;
                continue;
            }

            count++;
        }

        return count;
    }
}
