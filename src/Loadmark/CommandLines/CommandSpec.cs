using System.Text;
using Loadmark.Core.Texts;
using Loadmark.Questions;

namespace Loadmark.CommandLines;

/// <summary>
/// A command, told once but for its name, which stands in the list that it is in: the parser, the near words of a mistyped one, the help
/// and the table in README are made of this. A command that asks what can be asked over HTTP too takes its name, its question and the
/// shared options from a <see cref="QuestionSpec"/>.
/// </summary>
internal sealed record CommandSpec
{
    /// <summary>What the command is for, in plain words that begin with a small letter.</summary>
    public required string Question { get; init; }

    /// <summary>What the command takes by place, in order.</summary>
    public IReadOnlyList<ParameterSpec> Parameters { get; init; } = [];

    /// <summary>
    /// How the parameters are shown where their mere order does not tell: alternatives, say; null where the command does.
    /// </summary>
    public string? Forms { get; init; }

    /// <summary>The options, in the order in which the help lists them.</summary>
    public IReadOnlyList<OptionSpec> Options { get; init; } = [];

    /// <summary>What the command needs, the end of the sentence that a complaint is; null where it is told otherwise.</summary>
    public string? Needs { get; init; }

    /// <summary>What the answer in JSON holds; null where there is none, or the commands below tell it.</summary>
    public string? Json { get; init; }

    /// <summary>Why there is no answer in JSON; null where there is one.</summary>
    public string? WhyNoJson { get; init; }

    /// <summary>Whether the command works on what is kept, so that its help shows where that is.</summary>
    public bool IsOnStore { get; init; }

    /// <summary>What the help has to say beyond the options; empty for nothing.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether the answer is a verdict, so that the help tells the severities.</summary>
    public bool TellsVerdicts { get; init; }

    /// <summary>A command that works as it stands; empty for none.</summary>
    public string Example { get; init; } = "";

    /// <summary>The page of the documentation that tells more, from the root of the project; null for none.</summary>
    public string? Documentation { get; init; }

    /// <summary>The commands below this one; empty for a command that runs.</summary>
    public IReadOnlyList<CommandEntry> Commands { get; init; } = [];

    /// <summary>Runs the command and gives the exit code; null where only the commands below can be run.</summary>
    public Func<CommandInput, int>? Run { get; init; }

    /// <summary>
    /// Whether it does without code made while it runs, which a command that answers at once is quicker for; see <c>Program.cs</c>.
    /// </summary>
    public bool AnswersAtOnce { get; init; }

    /// <summary>What the command is for, as a sentence that stands alone.</summary>
    public string Sentence => SentenceCase.Whole(Question);

    /// <summary>The options with those that mean something only beside one of them, each after it.</summary>
    public IEnumerable<OptionSpec> EveryOption => QuestionSpec.Every(Options);

    /// <summary>The command of a name below this one; null for none.</summary>
    public CommandSpec? Below(string name)
    {
        foreach (var command in Commands)
        {
            if (command.Name == name)
                return command.Spec;
        }

        return null;
    }

    /// <summary>What is typed after the command's name at the least.</summary>
    public string ShortUsage
    {
        get
        {
            if (Commands.Count > 0 && Run is null)
                return "COMMAND";
            var places = Forms ?? string.Join(' ', Parameters.Select(static parameter => parameter.Usage));
            return string.Join(' ', Options.Where(static option => option.IsRequired).Select(static option => option.Usage).Prepend(places))
                .Trim();
        }
    }

    /// <summary>All that can be typed after the command's name, what may be left out in brackets.</summary>
    /// <param name="withCommon">Whether with the options that are the same everywhere, <c>--data</c> and <c>--json</c>.</param>
    public string FullUsage(bool withCommon)
    {
        var usage = new StringBuilder(ShortUsage);
        foreach (var option in Options.Where(
            option => !option.IsRequired && Forms?.Contains(option.Typed, StringComparison.Ordinal) != true))
            usage.Append(option.With is { } with ? $" [{option.Usage} [{with.Usage}]]" : $" [{option.Usage}]");
        if (withCommon)
            usage.Append(IsOnStore ? $" [{CommonOptions.Data.Usage}]" : "").Append(Json is null ? "" : $" [{CommonOptions.Json.Usage}]");
        return usage.ToString().TrimStart();
    }
}
