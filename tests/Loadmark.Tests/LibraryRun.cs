using System.Text;
using Loadmark.Commands;
using Loadmark.Processes;
using Loadmark.Simulation;
using Loadmark.Sources;

namespace Loadmark.Tests;

/// <summary>Runs the program in this process on what is kept in a folder, with the real rules.</summary>
internal static class LibraryRun
{
    /// <summary>With nothing on standard input.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="args">The command line.</param>
    public static (int Code, string Output, string Error) In(string folder, TimeProvider clock, params string[] args) => In(folder, clock, Stream.Null, args);

    /// <summary>With something on standard input.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="input">What is on standard input.</param>
    /// <param name="args">The command line.</param>
    public static (int Code, string Output, string Error) In(string folder, TimeProvider clock, Stream input, params string[] args)
    {
        using var output = new MemoryStream();
        using var error = new StringWriter { NewLine = "\n" };
        var process = new ProcessContext
        {
            Output = output,
            OutputEncoding = new UTF8Encoding(false),
            Error = error,
            Input = () => input,
            Environment = name => name == "LOADMARK_DATA" ? folder : null,
            Time = clock,
            Debug = true,
        };
        var code = LoadmarkCommand.Run(args, process, new RigFileSource(process, null), static (rig, startUp) => RigAnalysis.Of(rig, startUp ? AnalysisDepth.WholeVerdict : AnalysisDepth.Verdict).Check);
        return (code, Encoding.UTF8.GetString(output.ToArray()), error.ToString());
    }
}
