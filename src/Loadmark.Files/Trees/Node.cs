using Loadmark.Files.Errors;

namespace Loadmark.Files.Trees;

/// <summary>A value in the file with the span it takes.</summary>
/// <param name="start">Where it begins.</param>
internal abstract class Node(Spot start)
{
    /// <summary>Where the node begins in the file.</summary>
    public Spot Start { get; } = start;

    /// <summary>Index just past its last character; of a block, past the last character of its last value.</summary>
    public int EndIndex { get; set; }

    /// <summary>Whether the node says "nothing here": no text, <c>~</c> or <c>null</c>, without quotes.</summary>
    public virtual bool IsNull => false;

    /// <summary>What the node is, for messages: "a list".</summary>
    public abstract string Form { get; }
}
