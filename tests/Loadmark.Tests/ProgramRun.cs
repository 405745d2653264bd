using System.Text;
using Loadmark.Commands;
using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Files.Errors;
using Loadmark.Files.Parsing;
using Loadmark.Processes;
using Loadmark.Simulation;
using Loadmark.Sources;

namespace Loadmark.Tests;

/// <summary>Runs the program in this process, with rigs and check results made by hand.</summary>
internal sealed class ProgramRun : IRigSource
{
    private readonly Dictionary<string, RigFileResult> _inputs = [];
    private readonly Dictionary<string, CheckResult> _results = [];

    public int Width { get; init; } = 80;

    public bool Colour { get; init; }

    public bool Debug { get; init; }

    public Encoding Encoding { get; init; } = new UTF8Encoding(false);

    public string Input { get; init; } = "";

    /// <summary>A file that reads well and whose check says <paramref name="result"/>.</summary>
    public ProgramRun With(string file, CheckResult result)
    {
        _inputs[file] = new RigFileResult(new Rig { Name = file }, []);
        _results[file] = result;
        return this;
    }

    /// <summary>A file that cannot be read.</summary>
    public ProgramRun With(string file, params FileError[] errors)
    {
        _inputs[file] = new RigFileResult(null, [.. errors.Select(error => error with { File = file })]);
        return this;
    }

    public Answer Run(params string[] args)
    {
        using var output = new MemoryStream();
        using var error = new StringWriter { NewLine = "\n" };
        var process = new ProcessContext
        {
            Output = output,
            OutputEncoding = Encoding,
            Error = error,
            Input = () => new MemoryStream(Encoding.UTF8.GetBytes(Input)),
            Width = Width,
            Colour = Colour,
            Debug = Debug,
        };
        var code = LoadmarkCommand.Run(args, process, this, (rig, _) => _results[rig.Name]);
        return new Answer(code, Encoding.GetString(output.ToArray()), error.ToString());
    }

    /// <summary>Runs the program with rigs from disk and the real rules.</summary>
    public static (int Code, string Output) WithFiles(params string[] args) => WithFiles(CancellationToken.None, args);

    /// <summary>The same where Ctrl-C has been pressed, or will be.</summary>
    public static (int Code, string Output) WithFiles(CancellationToken interruption, params string[] args)
    {
        var answer = Answering(interruption, args);
        return (answer.Code, answer.Output);
    }

    /// <summary>The same with what it says beside its answer.</summary>
    internal static Answer Answering(CancellationToken interruption, params string[] args)
    {
        using var output = new MemoryStream();
        using var error = new StringWriter { NewLine = "\n" };
        var process = new ProcessContext
        {
            Output = output,
            OutputEncoding = new UTF8Encoding(false),
            Error = error,
            Input = static () => Stream.Null,
            Interruption = () => interruption,
            Width = 80,
            Colour = false,
            Debug = false,
        };
        var code = LoadmarkCommand.Run(args, process, new RigFileSource(process, null), static (rig, startUp) => RigAnalysis.Of(rig, startUp ? AnalysisDepth.WholeVerdict : AnalysisDepth.Verdict).Check);
        return new Answer(code, Encoding.UTF8.GetString(output.ToArray()), error.ToString());
    }

    public (RigFileResult Reading, string? Text) ReadWithText(string path, IGearLookup? library) => (_inputs[path], null);

    internal sealed record Answer(int Code, string Output, string Error);
}
