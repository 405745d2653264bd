using System.Text;

namespace Loadmark.Bench;

/// <summary>A table of results, printed and written as Markdown under bench/results.</summary>
internal sealed class ResultTable(string title, string about, params string[] columns)
{
    private readonly List<string[]> _rows = [];

    public void Add(params string[] cells) => _rows.Add(cells);

    /// <summary>Prints the table, and writes it where a name is given.</summary>
    public void Write(string? fileName)
    {
        var text = new StringBuilder();
        text.Append($"# {title}\n\n{about}\n\n");
        text.Append($"| {string.Join(" | ", columns)} |\n");
        text.Append($"| {string.Join(" | ", columns.Select(_ => "---"))} |\n");
        foreach (var row in _rows)
            text.Append($"| {string.Join(" | ", row)} |\n");

        Console.Write(text);
        if (fileName is null)
            return;
        var folder = Path.Combine("bench", "results");
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, fileName), text.ToString());
    }

    public static string Machine =>
        $".NET {Environment.Version}, {Environment.ProcessorCount} cores, shared machine: read the ratios, not the times.";
}
