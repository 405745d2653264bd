using Loadmark.Files.Errors;

namespace Loadmark.Files.Trees;

/// <summary>Says in plain words what the YAML library says in its own.</summary>
internal static class YamlWords
{
    private static readonly (string Part, string Plain)[] Phrases =
    [
        ("tab", "a tab stands where spaces are wanted; YAML is indented with spaces only"),
        (
            "invalid mapping",
            "a colon stands where it cannot; is the line indented as those above it, and is text that holds ': ' in quotes?"),
        ("',' or '}'", "a { is not closed, or a comma is missing between two entries"),
        ("',' or ']'", "a [ is not closed, or a comma is missing between two entries"),
        ("expected '-'", "the entries of a list do not line up, or keys and a list are mixed"),
        ("expected key", "this line is indented differently from those it belongs to"),
        ("escape", "a backslash in quotes stands before a character that it cannot; write \\\\ for a backslash"),
        ("surrogate", "a \\u in quotes is half a character"),
        ("quoted scalar", "a quotation mark is not closed, or the text in quotes goes on without indentation"),
        ("cannot start any token", "this character cannot begin a text; put the text in quotes"),
        ("while scanning an anchor", "anchors (&name) and aliases (*name) are not allowed; put text that begins with & or * in quotes"),
        ("directive", "a line that begins with % is not allowed here"),
        ("unexpected end", "the file ends in the middle of something"),
        ("document start", "there is text where a key was expected; is a ':' missing or a bracket not opened?"),
        ("document end", "there is text where a key was expected; is a ':' missing or a bracket closed twice?"),
        ("':'", "a ':' is missing after a key"),
    ];

    /// <summary>The plain words for a message of the library, with the original in brackets.</summary>
    public static string Say(string detail)
    {
        foreach (var (part, plain) in Phrases)
        {
            if (detail.Contains(part, StringComparison.OrdinalIgnoreCase))
                return $"{plain} (YAML: {Trim(detail)})";
        }

        return $"this is not YAML ({Trim(detail)})";
    }

    private static string Trim(string detail) => ErrorList.Quote(detail).TrimEnd('.');
}
