using System.CommandLine;
using System.CommandLine.Parsing;
using Loadmark.Core.Gear;
using Loadmark.Core.Texts;
using Loadmark.Sheets;
using Loadmark.Sources;

namespace Loadmark.Commands;

/// <summary>The commands about the gear library and the rigs that are kept, and the reading of what was typed for them.</summary>
internal sealed class LibraryLine
{
    private static readonly string[] Verbs = ["list", "show", "add", "measure", "import", "export", "affected"];

    private readonly Command _gear = new("gear");
    private readonly Command _rigs = new("rigs");
    private readonly Dictionary<Command, Argument<string[]>> _typed = [];
    private readonly Option<string> _kind = new("--kind");
    private readonly Option<string> _name = new("--name");
    private readonly Option<string> _words = new("--words");
    private readonly Option<string> _from = new("--from");
    private readonly Option<string> _run = new("--run");
    private readonly Option<string> _start = new("--start");
    private readonly Option<string> _meter = new("--meter");
    private readonly Option<string> _note = new("--note");
    private readonly Option<string[]> _take = new("--take") { AllowMultipleArgumentsPerToken = false, Arity = ArgumentArity.OneOrMore };
    private readonly Option<bool> _takeAll = new("--take-all");
    private readonly Option<bool> _linked = new("--linked");
    private readonly Option<bool> _force = new("--force");

    /// <summary>The names of the options.</summary>
    public static IReadOnlyList<string> OptionNames { get; } =
        ["--kind", "--name", "--words", "--from", "--run", "--start", "--meter", "--note", "--take", "--take-all", "--linked"];

    /// <summary>Adds the commands to the program.</summary>
    public void AddTo(Command root)
    {
        Add(_gear, "list", _kind);
        Add(_gear, "show", _kind);
        Add(_gear, "add", _kind, _name, _words, _from, _take, _takeAll);
        Add(_gear, "measure", _run, _start, _meter, _note);
        Add(_gear, "import", _take, _takeAll);
        Add(_gear, "export", _kind, _force);
        Add(_rigs, "list");
        Add(_rigs, "import");
        Add(_rigs, "export", _linked, _force);
        Add(_rigs, "affected", _kind);
        root.Add(_gear);
        root.Add(_rigs);
    }

    /// <summary>What a command is about; null when it is none of these.</summary>
    public static Topic? TopicOf(CommandResult command) =>
        (command.Parent is CommandResult above && above.Command.Parents.Any() ? above.Command.Name : command.Command.Name) switch
        {
            "gear" => Topic.Gear,
            "rigs" => Topic.Rigs,
            _ => null,
        };

    /// <summary>Reads what was typed.</summary>
    public Request Read(ParseResult parsed, Topic topic, bool json)
    {
        var command = parsed.CommandResult.Command;
        if (!_typed.TryGetValue(command, out var argument))
            return new Request.Wrong(
                topic,
                $"{command.Name} needs to know what to do: {string.Join(", ", command.Subcommands.Select(static one => one.Name))}.");
        var typed = parsed.GetValue(argument) ?? [];
        var kind = KindOf(parsed.GetValue(_kind), out var isOdd);
        if (isOdd)
            return new Request.Wrong(topic, $"--kind: expected load, supply or lead, found '{parsed.GetValue(_kind)}'.");
        List<string> take = [.. (parsed.GetValue(_take) ?? []).SelectMany(static tags => tags.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))];
        var force = parsed.GetResult(_force) is { Implicit: false };
        var takesAll = parsed.GetResult(_takeAll) is { Implicit: false };
        return (topic, command.Name, typed) switch
        {
            (Topic.Gear, "list", _) => new Request.GearList(string.Join(' ', typed), kind, json),
            (Topic.Gear, "show", [var tag]) => new Request.GearShow(tag, kind, json),
            (Topic.Gear, "add", []) when parsed.GetValue(_from) is { } rig => new Request.GearAdd(null, null, kind, null, "", rig, take, takesAll, json),
            (Topic.Gear, "add", [var tag, var label]) when parsed.GetValue(_from) is null =>
                new Request.GearAdd(tag, label, kind, parsed.GetValue(_name), parsed.GetValue(_words) ?? "", null, [], false, json),
            (Topic.Gear, "add", _) => new Request.Wrong(
                topic, "gear add needs a tag and what is printed, or --from with the path of a rig file."),
            (Topic.Gear, "measure", [var tag]) when parsed.GetValue(_run) is not null || parsed.GetValue(_start) is not null =>
                new Request.GearMeasure(
                    tag, parsed.GetValue(_run), parsed.GetValue(_start), parsed.GetValue(_meter), parsed.GetValue(_note), json),
            (Topic.Gear, "measure", _) => new Request.Wrong(
                topic, "gear measure needs one tag, and what the meter showed after --run or --start."),
            (Topic.Gear, "import", [var file]) => new Request.GearImport(file, take, takesAll, json),
            (Topic.Gear, "export", [var file]) => new Request.GearExport(file, kind, force, json),
            (Topic.Rigs, "list", []) => new Request.RigsList(json),
            (Topic.Rigs, "import", _) when StandardInput.IsNamedTwice(typed) => new Request.Wrong(topic, StandardInput.OnceOnly),
            (Topic.Rigs, "import", [_, ..]) => new Request.RigsImport(typed, json),
            (Topic.Rigs, "export", [var rig, var file]) => new Request.RigsExport(
                rig, file, parsed.GetResult(_linked) is { Implicit: false }, force, json),
            (Topic.Rigs, "affected", [var tag]) => new Request.RigsAffected(tag, kind, json),
            (_, var verb, _) => new Request.Wrong(topic, Needs(topic, verb)),
        };
    }

    /// <summary>What a word after gear or rigs may have meant, as the end of a sentence; empty when nothing is near.</summary>
    public static string Hint(string typed) => NearestWord.Find(typed, Verbs) is { } nearest ? $" Did you mean {nearest}?" : "";

    private static string Needs(Topic topic, string verb) => (topic, verb) switch
    {
        (Topic.Gear, "show") => "gear show needs one tag.",
        (Topic.Gear, _) => $"gear {verb} needs the path of one file.",
        (_, "list") => "rigs list takes nothing more.",
        (_, "import") => "rigs import needs the path of a rig file.",
        (_, "export") => "rigs export needs a rig that is kept, and the path of the file to write.",
        _ => "rigs affected needs the tag of one piece of gear.",
    };

    private static GearKind? KindOf(string? typed, out bool isOdd)
    {
        isOdd = false;
        if (typed is null)
            return null;
        foreach (var kind in Enum.GetValues<GearKind>())
        {
            if (kind.ToString().Equals(typed, StringComparison.OrdinalIgnoreCase))
                return kind;
        }

        isOdd = true;
        return null;
    }

    private void Add(Command above, string verb, params Option[] options)
    {
        var command = new Command(verb);
        var typed = new Argument<string[]>("WHAT") { Arity = ArgumentArity.ZeroOrMore };
        _typed.Add(command, typed);
        command.Add(typed);
        foreach (var option in options)
            command.Add(option);
        above.Add(command);
    }
}
