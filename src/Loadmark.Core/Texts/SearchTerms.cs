using System.Text;

namespace Loadmark.Core.Texts;

/// <summary>Takes texts apart for searching.</summary>
internal static class SearchTerms
{
    /// <summary>The runs of letters and digits of a text, in small letters.</summary>
    public static IEnumerable<string> Of(string text)
    {
        var start = -1;
        for (var index = 0; index <= text.Length; index++)
        {
            var isPart = index < text.Length && char.IsLetterOrDigit(text[index]);
            if (isPart && start < 0)
                start = index;
            if (isPart || start < 0)
                continue;
            yield return text[start..index].ToLowerInvariant();
            start = -1;
        }
    }

    /// <summary>A tag without signs and spaces, in small letters: <c>dl02</c>.</summary>
    public static string Bare(string tag) => string.Concat(Of(tag));

    /// <summary>A bare tag without noughts before its numbers: <c>dl2</c>.</summary>
    public static string WithoutNoughts(string bare)
    {
        var text = new StringBuilder(bare.Length);
        for (var index = 0; index < bare.Length; index++)
        {
            var isLeading = bare[index] == '0'
                && (index == 0 || !char.IsAsciiDigit(bare[index - 1]) || (text.Length > 0 && !char.IsAsciiDigit(text[^1])));
            if (!isLeading || index + 1 == bare.Length || !char.IsAsciiDigit(bare[index + 1]))
                text.Append(bare[index]);
        }

        return text.ToString();
    }
}
