using System.CommandLine;

namespace Loadmark.CommandLines;

/// <summary>A command with the parser's symbols for what it takes.</summary>
/// <param name="Spec">The command.</param>
/// <param name="Path">The command as it is typed after the program's name; empty for the program alone.</param>
/// <param name="Options">The symbol of each option by its name, those of every command among them.</param>
/// <param name="Words">The symbol of what is typed by place; null where there is nothing.</param>
internal sealed record KnownCommand(CommandSpec Spec, string Path, IReadOnlyDictionary<string, Option> Options, Argument<string[]>? Words);
