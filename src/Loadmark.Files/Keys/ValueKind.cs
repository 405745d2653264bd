using Loadmark.Files.Errors;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Keys;

/// <summary>How values of one kind stand in a rig file.</summary>
/// <remarks>
/// Values are objects here rather than of a type parameter: code for a type parameter that is a value type of another project cannot be
/// compiled ahead, and some 200 methods to compile cost a command 20 ms at its start. For the same reason a row sets
/// a value by a pattern: the cast to a nullable type of another project's value is not compiled ahead. A row that takes the wrong type for
/// its kind does not get past the tests, which read and write every field.
/// </remarks>
/// <param name="Form">What the schema takes for them.</param>
/// <param name="Expected">What is expected where something other than a text stands.</param>
/// <param name="Read">Reads the text of a key; null, with an error, where it cannot be read.</param>
/// <param name="Write">The text that reads back as a value; null where it says nothing.</param>
internal sealed record ValueKind(
    ValueForm Form, string Expected, Func<ScalarNode, string, ErrorList, object?> Read, Func<object, string?> Write)
{
    /// <summary>The words that the value may be; empty unless only some words are taken.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>The smallest number.</summary>
    public int Least { get; init; }

    /// <summary>The largest number; 0 for no bound.</summary>
    public int Most { get; init; }
}
