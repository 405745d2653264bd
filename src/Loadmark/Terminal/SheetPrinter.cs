using Loadmark.Processes;
using Spectre.Console;

namespace Loadmark.Terminal;

/// <summary>Puts a sheet out, with or without colour.</summary>
internal static class SheetPrinter
{
    /// <summary>Has a sheet written and puts it out.</summary>
    public static void Print(ProcessContext process, Action<Sheet> write)
    {
        var sheet = new Sheet(process.Width, process.Unicode, process.Colour);
        write(sheet);
        using var writer = new StreamWriter(process.Output, process.OutputEncoding, bufferSize: 1 << 14, leaveOpen: true);

        // Everything is said here, so that the library looks nothing up: start-up time is
        // the user's. The inks are of the 256 colours that nearly every terminal has; "true colour" keeps the library
        // from searching for nearer ones.
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = process.Colour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = process.Colour ? ColorSystemSupport.TrueColor : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            EnvironmentVariables = new Dictionary<string, string>(StringComparer.Ordinal),
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
            Out = new PageOutput(writer, sheet.Width, process.Colour),
        });
        console.Write(sheet);
    }
}
