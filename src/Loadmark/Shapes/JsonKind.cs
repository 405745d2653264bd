namespace Loadmark.Shapes;

/// <summary>What sort of value of JSON something is.</summary>
internal enum JsonKind
{
    /// <summary>A text.</summary>
    Text,

    /// <summary>A text that is a moment (ISO 8601, UTC).</summary>
    Moment,

    /// <summary>A text that is a UUID (RFC 9562).</summary>
    Uuid,

    /// <summary>A number, in the unit that its description names.</summary>
    Number,

    /// <summary>A whole number from 0, of at most 63 bits.</summary>
    Count,

    /// <summary>A whole number from 0, of at most 64 bits.</summary>
    Seed,

    /// <summary>True or false.</summary>
    Flag,

    /// <summary>A list.</summary>
    List,

    /// <summary>An object.</summary>
    Object,

    /// <summary>Anything: an object, or the same as a text.</summary>
    Any,

    /// <summary>No JSON, but the bytes of a file.</summary>
    File,
}
