using System.Collections.Immutable;
using System.Text;

namespace Loadmark.Web.Tests.Texts;

/// <summary>One place in the source where a text is looked up: <c>T["…", …]</c>.</summary>
/// <param name="Expression">What is between the brackets before the first comma.</param>
/// <param name="Texts">The texts written there; empty where it is computed elsewhere.</param>
internal sealed record TextUse(string Expression, ImmutableArray<string> Texts)
{
    private const string Begin = "T[";

    /// <summary>All uses in a piece of source.</summary>
    public static IEnumerable<TextUse> Find(string source)
    {
        for (var at = source.IndexOf(Begin, StringComparison.Ordinal); at >= 0; at = source.IndexOf(Begin, at + 1, StringComparison.Ordinal))
        {
            if (at == 0 || !char.IsLetterOrDigit(source[at - 1]))
                yield return Read(source, at + Begin.Length);
        }
    }

    private static TextUse Read(string source, int at)
    {
        var texts = ImmutableArray.CreateBuilder<string>();
        var begin = at;
        var depth = 0;
        for (; depth > 0 || source[at] is not (']' or ','); at++)
        {
            switch (source[at])
            {
                case '(' or '[' or '{':
                    depth++;
                    break;
                case ')' or ']' or '}':
                    depth--;
                    break;
                case '"':
                    var (text, end) = Literal(source, at);
                    if (!source[begin..at].TrimEnd().EndsWith("==", StringComparison.Ordinal))
                        texts.Add(text);
                    at = end;
                    break;
            }
        }

        return new TextUse(source[begin..at].Trim(), texts.ToImmutable());
    }

    /// <summary>A text in quotation marks, in pieces or whole, and where its last one is.</summary>
    private static (string Text, int End) Literal(string source, int at)
    {
        Assert.False(
            at > 0 && source[at - 1] is '$' or '@',
            $"a looked-up text is written out: {source.AsSpan(at, Math.Min(40, source.Length - at))}");
        var text = new StringBuilder();
        for (at++; source[at] != '"'; at++)
        {
            if (source[at] == '\\')
                at++;
            text.Append(source[at]);
        }

        var rest = source.AsSpan(at + 1).TrimStart();
        if (rest is not ['+', ..] || rest[1..].TrimStart() is not ['"', ..] next)
            return (text.ToString(), at);
        var (more, end) = Literal(source, source.Length - next.Length);
        return (text + more, end);
    }
}
