using Loadmark.Files.Errors;
using Loadmark.Processes;

namespace Loadmark.Sources;

/// <summary>Labels on standard input, one a line.</summary>
internal static class StandardInputLabels
{
    /// <summary>How much is read, in characters: some thirty thousand labels. What never ends is cut off there.</summary>
    private const int Most = 1024 * 1024;

    /// <summary>Reads all lines that have text in them.</summary>
    /// <param name="process">Standard input, and where to say what is waited for.</param>
    /// <param name="texts">Where the lines go.</param>
    /// <returns>What keeps them from being read, as a sentence; null where nothing does.</returns>
    public static string? Read(ProcessContext process, List<string> texts)
    {
        using var wait = InputWait.ForStandardInput(process, "the labels, one a line");
        try
        {
            using var lines = new StreamReader(process.Input(), process.InputEncoding);
            var text = new char[Most + 1];
            var count = lines.ReadBlock(text);
            if (count > Most)
                return $"{FileError.StandardInput} has over {Most / 1024} KiB of text. Give the labels in several parts.";
            using var read = new StringReader(new string(text, 0, count));
            while (read.ReadLine() is { } line)
            {
                if (!string.IsNullOrWhiteSpace(line))
                    texts.Add(line);
            }

            return null;
        }
        catch (IOException fault)
        {
            return $"{FileError.StandardInput} cannot be read: {fault.Message}.";
        }
    }
}
