using System.Text;
using Loadmark.Commands;
using Loadmark.Hosting;
using Loadmark.Simulation;
using Loadmark.Sources;

namespace Loadmark.Tests;

/// <summary>Runs the program in this process on what is kept in a folder, with the real rules.</summary>
internal static class LibraryRun
{
    public static (int Code, string Output, string Error) In(string folder, TimeProvider clock, params string[] args)
    {
        using var output = new MemoryStream();
        using var error = new StringWriter { NewLine = "\n" };
        var around = new Surroundings
        {
            Output = output,
            OutputEncoding = new UTF8Encoding(false),
            Error = error,
            Input = static () => Stream.Null,
            Environment = name => name == "LOADMARK_DATA" ? folder : null,
            Time = clock,
            Debug = true,
        };
        var code = LoadmarkCommand.Run(args, around, new RigFileSource(around, null), static (rig, startUp) => RigAnalysis.Of(rig, startUp ? AnalysisDepth.WholeVerdict : AnalysisDepth.Verdict).Check);
        return (code, Encoding.UTF8.GetString(output.ToArray()), error.ToString());
    }
}
