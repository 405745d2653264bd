namespace Loadmark.CommandLines;

/// <summary>Something that a command takes by its place, without an option's name before it.</summary>
/// <param name="Placeholder">What stands for it in the help, in capitals: <c>RIG</c>.</param>
/// <param name="Text">What it is, in sentences for people.</param>
internal sealed record ParameterSpec(string Placeholder, string Text)
{
    /// <summary>Whether several may be given.</summary>
    public bool IsRepeated { get; init; }

    /// <summary>Whether the command does without it.</summary>
    public bool IsOptional { get; init; }

    /// <summary>The parameter as the help's line of usage shows it.</summary>
    public string Usage => (IsOptional ? $"[{Placeholder}]" : Placeholder) + (IsRepeated ? "..." : "");
}
