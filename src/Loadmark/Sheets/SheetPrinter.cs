using Loadmark.Hosting;
using Spectre.Console;

namespace Loadmark.Sheets;

/// <summary>Puts a sheet out, with or without colour.</summary>
internal static class SheetPrinter
{
    /// <summary>Writes the whole sheet.</summary>
    public static void Print(Sheet sheet, Surroundings around)
    {
        using var writer = new StreamWriter(around.Output, around.OutputEncoding, bufferSize: 1 << 14, leaveOpen: true);

        // Everything is said here, so that the library looks nothing up: start-up time is the user's.
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = around.Colour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = around.Colour ? ColorSystemSupport.EightBit : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
            Out = new PageOutput(writer, sheet.Width, around.Colour),
        });
        console.Write(sheet);
    }
}
