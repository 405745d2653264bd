using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Storage.Gear;

/// <summary>What is said of a piece of gear.</summary>
public sealed record GearContent
{
    /// <summary>What sort of thing the piece is. It stays what it is.</summary>
    public required GearKind Kind { get; init; }

    /// <summary>
    /// The tag that rigs know it by, as typed: <c>delay-2</c>. Unlike those of all other gear of its kind, capitals aside.
    /// </summary>
    public required string Tag { get; init; }

    /// <summary>A name for people; empty when it has none besides its tag.</summary>
    public string Name { get; init; } = "";

    /// <summary>
    /// What is printed on the piece; empty when that is not known. For lists and searching: <see cref="Text"/> has it too.
    /// </summary>
    public string Label { get; init; } = "";

    /// <summary>Words that it is filed under, each on one line.</summary>
    public ValueList<string> Words { get; init; }

    /// <summary>What a rig file says of the piece, without its tag. The store does not read it.</summary>
    public required string Text { get; init; }
}
