using YamlDotNet.Core;
using YamlDotNet.Core.Tokens;

namespace Loadmark.Files.Editing;

/// <summary>Finds the comments of a text.</summary>
internal static class CommentList
{
    /// <summary>Whether a text has every comment that another has, each as often.</summary>
    public static bool HoldsAll(string text, string other)
    {
        var comments = Of(text);
        return Of(other).All(comments.Remove);
    }

    /// <summary>Whether a text has every comment that another has and a third, which that came from, has not.</summary>
    public static bool HoldsNew(string text, string other, string before)
    {
        var (comments, known) = (Of(text), Of(before));
        return Of(other).Where(comment => !known.Remove(comment)).All(comments.Remove);
    }

    private static List<string> Of(string text)
    {
        var comments = new List<string>();
        var scanner = new Scanner(new StringReader(text), skipComments: false);
        while (scanner.MoveNext())
        {
            if (scanner.Current is Comment comment)
                comments.Add(comment.Value);
        }

        return comments;
    }
}
