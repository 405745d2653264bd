using System.CommandLine;
using System.CommandLine.Parsing;
using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Core.Texts;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Sources;

namespace Loadmark.CommandLines;

/// <summary>Reads what was typed by the program's commands, and runs the one that was meant.</summary>
internal sealed class CommandParser
{
    private const string HelpWord = "help";

    private static readonly OptionSpec[] Everywhere = [CommonOptions.Data, CommonOptions.Json, CommonOptions.Help];

    private readonly CommandSpec _program;

    /// <summary>Sets up what can be typed.</summary>
    /// <param name="program">The program as a command, with all commands below it.</param>
    public CommandParser(CommandSpec program) => _program = program;

    /// <summary>Runs what was typed.</summary>
    /// <param name="args">What was typed after the program's name.</param>
    /// <param name="process">Streams and terminal.</param>
    /// <param name="rigs">Where rigs are read from.</param>
    /// <param name="check">What checks a rig; the second argument is whether the first seconds are computed in any case.</param>
    /// <returns>The exit code.</returns>
    public int Run(IReadOnlyList<string> args, ProcessContext process, IRigSource rigs, Func<Rig, bool, CheckResult> check)
    {
        var symbols = new ParserSymbols(_program, Everywhere, args);

        // A label or a file name may begin with @; it never names a file of further arguments.
        var typed = symbols.Root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null, EnablePosixBundling = false });
        var (spec, path, options, words) = symbols.Commands[typed.CommandResult.Command];
        if (args is [HelpWord, ..])
            return Help(process, args.Skip(1));
        if (typed.GetResult(options[CommonOptions.Help.Name]) is { Implicit: false })
            return Help(process, path.Split(' '));

        var input = new CommandInput(path, spec, typed, options)
        {
            Process = process,
            Source = rigs,
            Check = check,
            Words = words is null ? [] : typed.GetValue(words) ?? [],
        };
        if (Complaint(typed, spec) is { } complaint)
            return input.Refuse(complaint);
        if (input.Has(CommonOptions.Version))
        {
            SheetPrinter.Print(process, static sheet => HelpPage.WriteVersion(sheet, typeof(CommandParser).Assembly.GetName().Version));
            return ExitCode.Fine;
        }

        if (input.Data is "")
            return input.Refuse(Needs(CommonOptions.Data));
        if (spec.Run is null)
            return input.Refuse($"{path} needs to know what to do: {string.Join(", ", spec.Commands.Select(static one => one.Name))}.");
        return input.Json && spec.WhyNoJson is { } why ? input.Refuse(why) : spec.Run(input);
    }

    private int Help(ProcessContext process, IEnumerable<string> words)
    {
        var (spec, path) = (_program, "");
        foreach (var word in words)
        {
            if (spec.Below(word) is not { } below)
                break;
            (spec, path) = (below, $"{path} {word}".TrimStart());
        }

        SheetPrinter.Print(process, sheet => HelpPage.Write(sheet, spec, path));
        return ExitCode.Fine;
    }

    private string? Complaint(ParseResult typed, CommandSpec spec)
    {
        foreach (var token in typed.Tokens)
        {
            if (token.Type == TokenType.DoubleDash)
                break;
            if (token.Type == TokenType.Argument && LooksLikeOption(token.Value))
                return NoOption(token.Value, spec);
        }

        if (typed.UnmatchedTokens.Count > 0)
        {
            var stray = typed.UnmatchedTokens[0];
            return LooksLikeOption(stray)
                ? NoOption(stray, spec)
                : $"There is no command {stray}.{Hint(stray, spec.Commands.Select(static one => one.Name))}";
        }

        if (typed.Errors.FirstOrDefault(static error => error.SymbolResult is OptionResult) is { } fault)
            return fault.SymbolResult is OptionResult { Tokens.Count: 0 } bare ? Needs(bare.Option.Name) : fault.Message;

        // A command missing after the program, or after gear, is not told in the library's words.
        return typed.Errors.Count > 0 && spec.Commands.Count == 0 ? typed.Errors[0].Message : null;
    }

    /// <summary>
    /// The complaint of an option that the command has not: with the commands that have it, else with the nearest of its own, else of any
    /// command.
    /// </summary>
    private string NoOption(string typed, CommandSpec spec)
    {
        var name = typed.Split('=')[0];
        if (CommandsWith(name, _program, "").ToList() is { Count: > 0 } others)
            return $"There is no option {name} here; it goes with {Phrases.List(others)}.";

        var own = spec.EveryOption.Concat(Everywhere).Select(static option => option.Typed);
        var any = OptionsOf(_program).Append(CommonOptions.Version).Select(static option => option.Typed);
        var nearest = NearestWord.Find(typed, own.ToList()) ?? NearestWord.Find(typed, any.Distinct().ToList());
        return $"There is no option {typed}.{(nearest is null ? "" : $" Did you mean {nearest}?")}";
    }

    private string Needs(string typed) =>
        Needs(OptionsOf(_program).Append(CommonOptions.Data).First(option => option.Typed == typed));

    private static string Needs(OptionSpec option) => $"{option.Typed} needs {option.Needs} after it.";

    /// <summary>Whether it is typed like an option (<c>--json</c>), not like a figure with a minus sign (<c>-9V</c>).</summary>
    private static bool LooksLikeOption(string token)
    {
        var name = token.AsSpan().TrimStart('-');
        if (name.Length == token.Length || name.Length == 0 || !char.IsAsciiLetter(name[0]))
            return false;

        foreach (var character in name)
        {
            if (!char.IsAsciiLetterOrDigit(character) && character is not ('-' or '='))
                return false;
        }

        return true;
    }

    private static string Hint(string typed, IEnumerable<string> words) =>
        NearestWord.Find(typed, [.. words]) is { } nearest ? $" Did you mean {nearest}?" : "";

    /// <summary>The commands that have an option, each as it is typed after the program's name; the program alone by its own.</summary>
    private static IEnumerable<string> CommandsWith(string typed, CommandSpec spec, string path)
    {
        var own = path.Length > 0 ? spec.EveryOption : spec.EveryOption.Append(CommonOptions.Version);
        var here = own.Any(option => option.Typed == typed) ? [path.Length > 0 ? path : "loadmark alone"] : Array.Empty<string>();
        return here.Concat(spec.Commands.SelectMany(below => CommandsWith(typed, below.Spec, $"{path} {below.Name}".TrimStart())));
    }

    /// <summary>The options of a command, after those of the commands below it.</summary>
    private static IEnumerable<OptionSpec> OptionsOf(CommandSpec spec) =>
        spec.Commands.SelectMany(static below => OptionsOf(below.Spec)).Concat(spec.EveryOption);
}
