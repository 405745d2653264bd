using Loadmark.Files.Errors;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Parsing;

/// <summary>The rules for ids: what a name must be like so that other places can refer to it.</summary>
internal static class Ids
{
    /// <summary>The longest id, in UTF-16 code units.</summary>
    public const int Longest = 64;

    /// <summary>Whether a node holds a good id; adds an error when not.</summary>
    /// <param name="node">The key or text that is the id.</param>
    /// <param name="what">What it is the id of, for messages: "a load".</param>
    /// <param name="mayHaveSlash">Whether '/' may be in it; not where <c>supply/outlet</c> would come apart wrongly.</param>
    /// <param name="errors">Where faults go.</param>
    public static bool Check(ScalarNode node, string what, bool mayHaveSlash, ErrorList errors)
    {
        if (Problem(node.Value, mayHaveSlash) is not { } problem)
            return true;
        errors.Add(node.Start, $"'{ErrorList.Quote(node.Value)}' cannot be the id of {what}: {problem}", node.Value, $"an id of {what}");
        return false;
    }

    /// <summary>Why a text cannot be an id; null when it can.</summary>
    public static string? Problem(string id, bool mayHaveSlash)
    {
        if (string.IsNullOrWhiteSpace(id))
            return "it is empty";
        if (id.Length > Longest)
            return $"it is longer than {Longest} characters";
        if (char.IsWhiteSpace(id[0]) || char.IsWhiteSpace(id[^1]))
            return "it begins or ends with a space";
        foreach (var character in id)
        {
            if (char.IsControl(character) || character is '\u2028' or '\u2029')
                return "it holds a control character or a line break";
            if (character == '/' && !mayHaveSlash)
                return "it holds a '/', which parts a supply from its outlet";
        }

        return null;
    }
}
