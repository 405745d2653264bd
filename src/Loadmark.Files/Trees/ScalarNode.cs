using Loadmark.Files.Errors;

namespace Loadmark.Files.Trees;

/// <summary>A node that is a text: a key or a value.</summary>
internal sealed class ScalarNode(Spot start, string value, bool isPlain) : Node(start)
{
    /// <summary>The text, without quotes and escapes.</summary>
    public string Value { get; } = value;

    /// <summary>Whether the text stands without quotes.</summary>
    public bool IsPlain => isPlain;

    /// <inheritdoc/>
    public override bool IsNull => isPlain && (Value is "" or "~" or "null" or "Null" or "NULL");

    /// <inheritdoc/>
    public override string Form => "a text";
}
