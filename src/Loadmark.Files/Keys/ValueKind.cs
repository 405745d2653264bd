using Loadmark.Files.Errors;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Keys;

/// <summary>How values of one kind stand in a rig file.</summary>
/// <typeparam name="T">The type of the values; its default says nothing.</typeparam>
/// <param name="Form">What the schema takes for them.</param>
/// <param name="Expected">What is expected where something other than a text stands.</param>
/// <param name="Read">Reads the text of a key; the default, with an error, where it cannot be read.</param>
/// <param name="Write">The text that reads back as a value; null where it says nothing.</param>
internal sealed record ValueKind<T>(ValueForm Form, string Expected, Func<ScalarNode, string, ErrorList, T?> Read, Func<T, string?> Write)
{
    /// <summary>The words it takes; empty unless it takes fixed ones.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>The smallest number.</summary>
    public int Least { get; init; }

    /// <summary>The largest number; 0 for no bound.</summary>
    public int Most { get; init; }
}
