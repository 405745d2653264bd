using Loadmark.Answers;
using Loadmark.Core.Nameplates;
using Loadmark.Hosting;
using Loadmark.Sheets;

namespace Loadmark.Commands;

/// <summary><c>loadmark read</c>: what does this nameplate say?</summary>
internal sealed class ReadCommand(Surroundings around)
{
    /// <summary>Reads the texts and writes what they say.</summary>
    public int Run(Request.Read request)
    {
        // Quotes are easily forgotten, so words in a row are one label; several labels come over standard input.
        var texts = new List<string>();
        if (request.Texts is ["-"])
            AddLines(texts);
        else
            texts.Add(string.Join(' ', request.Texts));

        if (texts.Count == 0)
        {
            around.Error.WriteLine("loadmark: standard input has no line with text in it.");
            return ExitCode.Unreadable;
        }

        if (request.Json)
            NameplateJson.Write(around.Output, texts);
        else
            Print(texts);
        return ExitCode.Fine;
    }

    private void AddLines(List<string> texts)
    {
        using var input = new StreamReader(around.Input(), around.InputEncoding);
        while (input.ReadLine() is { } line)
        {
            if (!string.IsNullOrWhiteSpace(line))
                texts.Add(line);
        }
    }

    private void Print(List<string> texts) => SheetPrinter.Print(around, sheet =>
    {
        for (var index = 0; index < texts.Count; index++)
        {
            if (index > 0)
                sheet.BlankLine();
            NameplatePage.Write(sheet, NameplateReader.Read(texts[index]));
        }
    });
}
