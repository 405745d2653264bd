namespace Loadmark.Api.Requests;

/// <summary>What an option in the address takes.</summary>
internal enum OptionKind
{
    /// <summary>It is there or not: <c>?startup</c>, <c>?startup=true</c>, <c>?startup=false</c>.</summary>
    Flag,

    /// <summary>A whole number from 0.</summary>
    Number,

    /// <summary>A text.</summary>
    Text,

    /// <summary>Texts; the option may be given several times.</summary>
    Texts,
}
