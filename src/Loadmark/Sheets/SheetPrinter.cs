using Loadmark.Hosting;
using Spectre.Console;

namespace Loadmark.Sheets;

/// <summary>Puts a sheet out, with or without colour.</summary>
internal static class SheetPrinter
{
    /// <summary>Has a sheet written and puts it out.</summary>
    public static void Print(Surroundings around, Action<Sheet> write)
    {
        var sheet = new Sheet(around.Width, around.Unicode, around.Colour);
        write(sheet);
        using var writer = new StreamWriter(around.Output, around.OutputEncoding, bufferSize: 1 << 14, leaveOpen: true);

        // Everything is said here, so that the library looks nothing up: start-up time is
        // the user's. The inks are of the 256 colours that nearly every terminal has; "true colour" keeps the library
        // from searching for nearer ones.
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = around.Colour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = around.Colour ? ColorSystemSupport.TrueColor : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            EnvironmentVariables = new Dictionary<string, string>(StringComparer.Ordinal),
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
            Out = new PageOutput(writer, sheet.Width, around.Colour),
        });
        console.Write(sheet);
    }
}
