namespace Loadmark.Questions;

/// <summary>What an option takes, at the command line and in an address.</summary>
internal enum OptionKind
{
    /// <summary>The option is there or not: <c>--startup</c>; <c>?startup</c>, <c>?startup=true</c>, <c>?startup=false</c>.</summary>
    Flag,

    /// <summary>A whole number from 0.</summary>
    Number,

    /// <summary>A text.</summary>
    Text,

    /// <summary>Texts; the option may be given several times.</summary>
    Texts,
}
