namespace Loadmark.Questions;

/// <summary>An option, told once: the parser, the help, the addresses and their description are made of this.</summary>
/// <param name="Name">The name without dashes: <c>startup</c> is typed <c>--startup</c> and asked for with <c>?startup</c>.</param>
/// <param name="Kind">What the option takes.</param>
/// <param name="Text">What the option does, in sentences for people.</param>
internal sealed record OptionSpec(string Name, OptionKind Kind, string Text)
{
    /// <summary>What stands for the value in the help: the N of <c>--port N</c>; empty for a flag.</summary>
    public string Placeholder { get; init; } = "";

    /// <summary>What a complaint says that the option needs after it.</summary>
    public string Needs { get; init; } = Kind == OptionKind.Number ? "a number" : "something";

    /// <summary>A value, for the description of the addresses; empty where the option is of the command line only.</summary>
    public string Example { get; init; } = "";

    /// <summary>The words that the value may be; empty where it may be any.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>Whether the command cannot do without the option.</summary>
    public bool IsRequired { get; init; }

    /// <summary>An option that means something only beside this one; null for none.</summary>
    public OptionSpec? With { get; init; }

    /// <summary>The option as it is typed: <c>--port</c>.</summary>
    public string Typed => $"--{Name}";

    /// <summary>The option as it is typed with its value, as the help shows it: <c>--port N</c>.</summary>
    public string Usage => Placeholder.Length == 0 ? Typed : $"{Typed} {Placeholder}";
}
