using System.CommandLine;
using Loadmark.Questions;

namespace Loadmark.CommandLines;

/// <summary>
/// The parser's symbols for what was typed. Only a command whose name was typed can be meant, so only such have symbols: those of every
/// command cost a command that answers at once more than all else that is done with what was typed.
/// </summary>
internal sealed class ParserSymbols
{
    private readonly Dictionary<Command, KnownCommand> _commands = [];
    private readonly IReadOnlyList<string> _typed;

    /// <summary>Makes the symbols.</summary>
    /// <param name="program">The program as a command, with all commands below it.</param>
    /// <param name="everywhere">The options that may be typed with every command; the last of them also as <c>-h</c>.</param>
    /// <param name="typed">What was typed after the program's name.</param>
    public ParserSymbols(CommandSpec program, IReadOnlyList<OptionSpec> everywhere, IReadOnlyList<string> typed)
    {
        _typed = typed;
        var common = new Dictionary<string, Option>(StringComparer.Ordinal);
        foreach (var option in everywhere)
        {
            common.Add(option.Name, SymbolOf(option));
            common[option.Name].Recursive = true;
        }

        common[CommonOptions.Help.Name].Aliases.Add("-h");
        common.Add(CommonOptions.Version.Name, SymbolOf(CommonOptions.Version));
        Root = Built("loadmark", program, "", common);
        foreach (var option in common.Values)
            Root.Add(option);
    }

    /// <summary>The program's symbol, with the commands that may be meant below it.</summary>
    public Command Root { get; }

    /// <summary>Each command that may be meant, by its symbol.</summary>
    public IReadOnlyDictionary<Command, KnownCommand> Commands => _commands;

    /// <summary>The symbol of a command, with those below it that may be meant.</summary>
    private Command Built(string name, CommandSpec spec, string path, Dictionary<string, Option> common)
    {
        var command = new Command(name);
        var options = new Dictionary<string, Option>(common, StringComparer.Ordinal);
        foreach (var option in spec.EveryOption)
        {
            options[option.Name] = SymbolOf(option);
            command.Add(options[option.Name]);
        }

        Argument<string[]>? words = null;
        if (spec.Commands.Count == 0)
        {
            words = new Argument<string[]>("WORDS") { Arity = ArgumentArity.ZeroOrMore };
            command.Add(words);
        }

        foreach (var below in spec.Commands)
        {
            if (_typed.Contains(below.Name))
                command.Add(Built(below.Name, below.Spec, path.Length == 0 ? below.Name : $"{path} {below.Name}", common));
        }

        _commands.Add(command, new KnownCommand(spec, path, options, words));
        return command;
    }

    private static Option SymbolOf(OptionSpec option) => option.Kind switch
    {
        OptionKind.Flag => new Option<bool>(option.Typed),
        OptionKind.Texts => new Option<string[]>(option.Typed) { AllowMultipleArgumentsPerToken = false, Arity = ArgumentArity.OneOrMore },
        _ => new Option<string>(option.Typed),
    };
}
