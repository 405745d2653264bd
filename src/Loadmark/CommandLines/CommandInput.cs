using System.CommandLine;
using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Sources;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.CommandLines;

/// <summary>What was typed for a command, and what the command works with.</summary>
/// <param name="path">The command as it is typed after the program's name: <c>gear add</c>; empty for the program alone.</param>
/// <param name="spec">The command.</param>
/// <param name="typed">What was typed.</param>
/// <param name="options">The parser's symbol of each option.</param>
internal sealed class CommandInput(string path, CommandSpec spec, ParseResult typed, IReadOnlyDictionary<string, Option> options)
{
    /// <summary>Streams, terminal and clock.</summary>
    public required ProcessContext Process { get; init; }

    /// <summary>Where rigs are read from.</summary>
    public IRigSource Rigs => field ??= Source.KeptIn(Data);

    /// <summary>Where rigs are read from, whatever folder was typed.</summary>
    public required IRigSource Source { private get; init; }

    /// <summary>What checks a rig; the second argument is whether the first seconds are computed in any case.</summary>
    public required Func<Rig, bool, CheckResult> Check { get; init; }

    /// <summary>What was typed by place, in order.</summary>
    public required IReadOnlyList<string> Words { get; init; }

    /// <summary>The folder of what is kept, as typed; null where none was.</summary>
    public string? Data => Text(CommonOptions.Data);

    /// <summary>Whether the answer is to be JSON.</summary>
    public bool Json => Has(CommonOptions.Json);

    /// <summary>Says what is wrong with files and with what was typed.</summary>
    public Complaints Complaints => field ??= new Complaints(Process);

    /// <summary>Whether an option was typed.</summary>
    public bool Has(OptionSpec option) => typed.GetResult(options[option.Name]) is { Implicit: false };

    /// <summary>What was typed after an option; null where it was not typed.</summary>
    public string? Text(OptionSpec option) => typed.GetValue((Option<string>)options[option.Name]);

    /// <summary>What was typed after an option that may be typed several times, in order.</summary>
    public IReadOnlyList<string> Texts(OptionSpec option) => typed.GetValue((Option<string[]>)options[option.Name]) ?? [];

    /// <summary>Names parted by commas, in one option or several.</summary>
    public IReadOnlyList<string> Names(OptionSpec option) => CommaList.Of(Texts(option));

    /// <summary>Answers that the command cannot do with what was typed.</summary>
    /// <param name="complaint">What is wrong, in a sentence or two.</param>
    /// <returns>The exit code.</returns>
    public int Refuse(string complaint)
    {
        Complaints.Unusable(complaint);
        Process.Error.WriteLine(path.Length == 0 ? "See loadmark --help." : $"See loadmark {path} --help.");
        return ExitCode.Unreadable;
    }

    /// <summary>Answers that something is missing, or is too much.</summary>
    /// <returns>The exit code.</returns>
    public int Refuse() => Refuse(spec.Needs is { } needs ? $"{path} needs {needs}." : $"{path} takes nothing more.");
}
