using System.CommandLine.Parsing;
using System.Globalization;
using System.CommandLine;
using Loadmark.Core.Texts;
using Loadmark.Serving.Logs;
using Loadmark.Sheets;
using Loadmark.Sources;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Commands;

/// <summary>The commands and options the program knows, and the reading of what was typed.</summary>
internal sealed class CommandLine
{
    private readonly Command _root = new("loadmark");
    private readonly Command _check = new("check");
    private readonly Command _read = new("read");
    private readonly Command _plan = new("plan");
    private readonly Command _buy = new("buy");
    private readonly Argument<string[]> _boughtFor = new("RIG") { Arity = ArgumentArity.ZeroOrMore };
    private readonly Option<string[]> _prices = new("--prices") { AllowMultipleArgumentsPerToken = false, Arity = ArgumentArity.OneOrMore };
    private readonly Option<string[]> _room = new("--room") { AllowMultipleArgumentsPerToken = false, Arity = ArgumentArity.OneOrMore };
    private readonly Option<bool> _all = new("--all");
    private readonly Argument<string[]> _planned = new("RIG") { Arity = ArgumentArity.ZeroOrMore };
    private readonly Option<string[]> _only = new("--only") { AllowMultipleArgumentsPerToken = false, Arity = ArgumentArity.OneOrMore };
    private readonly Option<string> _write = new("--write");
    private readonly Argument<string[]> _rigs = new("RIG") { Arity = ArgumentArity.ZeroOrMore };
    private readonly Argument<string[]> _texts = new("TEXT") { Arity = ArgumentArity.ZeroOrMore };
    private readonly Command _settle = new("settle");
    private readonly Command _startUp = new("startup");
    private readonly Command _netlist = new("netlist");
    private readonly Argument<string[]> _settled = new("RIG") { Arity = ArgumentArity.ZeroOrMore };
    private readonly Argument<string[]> _started = new("RIG") { Arity = ArgumentArity.ZeroOrMore };
    private readonly Argument<string[]> _netlisted = new("RIG") { Arity = ArgumentArity.ZeroOrMore };
    private readonly Option<bool> _alsoStartUp = new("--startup");
    private readonly Option<string> _csv = new("--csv");
    private readonly Option<string> _out = new("--out");
    private readonly Option<bool> _steady = new("--steady");
    private readonly Option<string> _spread = new("--spread");
    private readonly Option<string> _seed = new("--seed");
    private readonly Option<string> _data = new("--data") { Recursive = true };
    private readonly LibraryLine _library = new();
    private readonly Option<string> _port = new("--port");
    private readonly Option<bool> _noBrowser = new("--no-browser");
    private readonly Option<string> _log = new("--log");
    private readonly Option<bool> _logContent = new("--log-content");
    private readonly Command _backup = new("backup");
    private readonly Command _restore = new("restore");
    private readonly Argument<string[]> _backedUp = new("FILE") { Arity = ArgumentArity.ZeroOrMore };
    private readonly Argument<string[]> _restored = new("FILE") { Arity = ArgumentArity.ZeroOrMore };
    private readonly Option<bool> _force = new("--force");
    private readonly Option<bool> _json = new("--json") { Recursive = true };
    private readonly Option<bool> _help = new("--help", "-h") { Recursive = true };
    private readonly Option<bool> _version = new("--version");

    /// <summary>Sets up what can be typed.</summary>
    public CommandLine()
    {
        _check.Add(_rigs);
        _check.Add(_alsoStartUp);
        _settle.Add(_settled);
        _startUp.Add(_started);
        _startUp.Add(_csv);
        foreach (var command in new[] { _settle, _startUp })
        {
            command.Add(_spread);
            command.Add(_seed);
        }

        _netlist.Add(_netlisted);
        _netlist.Add(_out);
        _netlist.Add(_steady);
        _root.Add(_settle);
        _root.Add(_startUp);
        _root.Add(_netlist);
        _read.Add(_texts);
        _plan.Add(_planned);
        _plan.Add(_only);
        _plan.Add(_write);
        foreach (var command in new[] { _plan, _startUp, _netlist })
            command.Add(_force);
        _buy.Add(_boughtFor);
        _buy.Add(_prices);
        _buy.Add(_room);
        _buy.Add(_only);
        _buy.Add(_all);
        _library.AddTo(_root);
        _root.Add(_plan);
        _root.Add(_buy);
        _root.Add(_check);
        _root.Add(_read);
        _backup.Add(_backedUp);
        _backup.Add(_force);
        _restore.Add(_restored);
        _root.Add(_backup);
        _root.Add(_restore);
        _root.Add(_data);
        _root.Add(_port);
        _root.Add(_noBrowser);
        _root.Add(_log);
        _root.Add(_logContent);
        _root.Add(_json);
        _root.Add(_help);
        _root.Add(_version);
    }

    /// <summary>The names of the commands.</summary>
    public static IReadOnlyList<string> CommandNames { get; } =
        ["check", "plan", "buy", "settle", "startup", "netlist", "read", "backup", "restore", "gear", "rigs", "help"];

    private static IReadOnlyList<string> OptionNames { get; } = ["--json", "--only", "--write", "--prices", "--room", "--all", "--startup", "--csv", "--spread", "--seed", "--out", "--steady", "--force", "--data", "--port", "--no-browser", "--log", "--log-content", .. LibraryLine.OptionNames, "--help", "--version"];

    /// <summary>Reads what was typed after the program's name.</summary>
    public Request Parse(IReadOnlyList<string> typed)
    {
        // A label or a file name may begin with @; it never names a file of further arguments.
        var parsed = _root.Parse(typed, new ParserConfiguration { ResponseFileTokenReplacer = null, EnablePosixBundling = false });
        var command = parsed.CommandResult.Command;
        var topic = LibraryLine.TopicOf(parsed.CommandResult) ?? TopicOf(command.Name);

        if (parsed.GetResult(_help) is { Implicit: false } || (typed.Count > 0 && typed[0] == "help"))
            return new Request.Help(TopicOfHelp(typed, topic));
        if (Complaint(parsed, topic) is { } complaint)
            return new Request.Wrong(topic, complaint);
        if (parsed.GetResult(_version) is { Implicit: false })
            return new Request.Version();

        var json = parsed.GetResult(_json) is { Implicit: false };
        if (parsed.GetValue(_data) is "")
            return new Request.Wrong(topic, Needs(_data.Name));
        var sampling = Sampling.Read(parsed.GetValue(_spread), parsed.GetValue(_seed), out var unusable);
        if (unusable is not null)
            return new Request.Wrong(topic, unusable);
        return Answer(parsed, topic, json, sampling) with { Data = parsed.GetValue(_data) };
    }

    private Request Answer(ParseResult parsed, Topic topic, bool json, Sampling? sampling)
    {
        var force = parsed.GetResult(_force) is { Implicit: false };
        return topic switch
        {
            Topic.Check when StandardInput.IsNamedTwice(parsed.GetValue(_rigs)) => new Request.Wrong(topic, StandardInput.OnceOnly),
            Topic.Check when parsed.GetValue(_rigs) is { Length: > 0 } rigs => new Request.Check(
                rigs, parsed.GetResult(_alsoStartUp) is { Implicit: false }, json),
            Topic.Check => new Request.Wrong(topic, "check needs the path of a rig file, or - for one on standard input."),
            Topic.Read when parsed.GetValue(_texts) is { Length: > 0 } texts => new Request.Read(texts, json),
            Topic.Read => new Request.Wrong(topic, "read needs the text of a nameplate, or - to read lines from standard input."),
            Topic.Plan when json && parsed.GetValue(_write) == StandardInput.Mark =>
                new Request.Wrong(
                    topic, "--write - writes the rig to standard output, where the answer in JSON goes too. Use one of them."),
            Topic.Plan when parsed.GetValue(_planned) is [var rig] => new Request.Plan(
                rig,
                Names(parsed.GetValue(_only)),
                parsed.GetValue(_write),
                force,
                json),
            Topic.Plan => new Request.Wrong(topic, "plan needs the path of one rig file."),
            Topic.Buy when parsed.GetValue(_boughtFor) is [var rig] && parsed.GetValue(_prices) is [var prices] =>
                new Request.Buy(
                    rig,
                    prices,
                    parsed.GetValue(_room) ?? [],
                    Names(parsed.GetValue(_only)),
                    parsed.GetResult(_all) is { Implicit: false },
                    json),
            Topic.Buy => new Request.Wrong(topic, "buy needs the path of one rig file, and one price list after --prices."),
            Topic.Settle when parsed.GetValue(_settled) is [var rig] => new Request.Settle(rig, sampling, json),
            Topic.Settle => new Request.Wrong(topic, "settle needs the path of one rig file."),
            Topic.StartUp when parsed.GetValue(_started) is [var rig] => new Request.StartUp(rig, parsed.GetValue(_csv), force, sampling, json),
            Topic.StartUp => new Request.Wrong(topic, "startup needs the path of one rig file."),
            Topic.Netlist when json => new Request.Wrong(topic, "netlist writes a SPICE deck, not JSON."),
            Topic.Netlist when parsed.GetValue(_netlisted) is [var rig] =>
                new Request.Netlist(rig, parsed.GetValue(_out), force, parsed.GetResult(_steady) is { Implicit: false }),
            Topic.Netlist => new Request.Wrong(topic, "netlist needs the path of one rig file."),
            Topic.Backup when parsed.GetValue(_backedUp) is [{ Length: > 0 } file] =>
                new Request.Backup(file, force, json),
            Topic.Backup => new Request.Wrong(topic, "backup needs the name of one file to write to."),
            Topic.Restore when parsed.GetValue(_restored) is [{ Length: > 0 } file] => new Request.Restore(file, json),
            Topic.Restore => new Request.Wrong(topic, "restore needs the name of one backup."),
            Topic.Gear or Topic.Rigs => _library.Read(parsed, topic, json),
            _ when json => new Request.Wrong(topic, "the page answers in a browser, not in JSON."),
            _ => Page(parsed),
        };
    }

    private Request Page(ParseResult parsed)
    {
        var typed = parsed.GetValue(_port);
        if (typed is not null
            && (!int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var port) || port > ushort.MaxValue))
            return new Request.Wrong(
                Topic.Program, $"--port: expected a number from 0 (any that is free) to {ushort.MaxValue}, found '{typed}'.");
        if (LogOptions.Read(parsed.GetValue(_log), parsed.GetResult(_logContent) is { Implicit: false }) is not { } log)
            return new Request.Wrong(Topic.Program, $"--log: expected text or json, found '{parsed.GetValue(_log)}'.");
        return new Request.Page(
            typed is null ? null : int.Parse(typed, CultureInfo.InvariantCulture),
            parsed.GetResult(_noBrowser) is not { Implicit: false },
            log);
    }

    /// <summary>Names parted by commas, in one option or several.</summary>
    private static List<string> Names(string[]? typed) =>
        [.. (typed ?? []).SelectMany(static names => names.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))];

    private static Topic TopicOfHelp(IReadOnlyList<string> typed, Topic topic) => typed is ["help", var asked, ..] ? TopicOf(asked) : topic;

    private static Topic TopicOf(string command) => command switch
    {
        "check" => Topic.Check,
        "read" => Topic.Read,
        "plan" => Topic.Plan,
        "buy" => Topic.Buy,
        "settle" => Topic.Settle,
        "startup" => Topic.StartUp,
        "netlist" => Topic.Netlist,
        "backup" => Topic.Backup,
        "restore" => Topic.Restore,
        "gear" => Topic.Gear,
        "rigs" => Topic.Rigs,
        _ => Topic.Program,
    };

    private static string? Complaint(ParseResult parsed, Topic topic)
    {
        foreach (var token in parsed.Tokens)
        {
            if (token.Type == TokenType.DoubleDash)
                break;
            if (token.Type == TokenType.Argument && LooksLikeOption(token.Value))
                return $"There is no option {token.Value}.{Hint(token.Value, OptionNames)}";
        }

        if (parsed.UnmatchedTokens.Count > 0)
        {
            var stray = parsed.UnmatchedTokens[0];
            return LooksLikeOption(stray)
                ? $"There is no option {stray}.{Hint(stray, OptionNames)}"
                : $"There is no command {stray}.{(topic is Topic.Gear or Topic.Rigs ? LibraryLine.Hint(stray) : Hint(stray, CommandNames))}";
        }

        if (parsed.Errors.FirstOrDefault(static error => error.SymbolResult is OptionResult) is { } fault)
            return fault.SymbolResult is OptionResult { Tokens.Count: 0 } bare ? Needs(bare.Option.Name) : fault.Message;

        // The program alone is no mistake, though the library sees a command missing: it shows the help.
        return topic != Topic.Program && parsed.Errors.Count > 0 && !parsed.CommandResult.Command.Subcommands.Any()
            ? parsed.Errors[0].Message
            : null;
    }

    private static string Needs(string option) => $"{option} needs {option switch
    {
        "--data" => "the name of a folder",
        "--write" or "--csv" or "--out" or "--prices" or "--from" => "the name of a file",
        "--port" or "--spread" or "--seed" => "a number",
        "--log" => "the word text or json",
        _ => "something",
    }} after it.";

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

    private static string Hint(string typed, IReadOnlyList<string> words) =>
        NearestWord.Find(typed, words) is { } nearest ? $" Did you mean {nearest}?" : "";
}
