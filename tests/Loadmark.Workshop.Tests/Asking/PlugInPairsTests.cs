using Loadmark.Workshop.Asking;

namespace Loadmark.Workshop.Tests.Asking;

/// <summary>
/// Pairs of labels whose answers were decided at the bench, before anything answered them: by the rules as the documentation has them and the
/// conventions of the trade (common practice, no source), by somebody who did not see the code.
/// </summary>
public sealed class PlugInPairsTests(ITestOutputHelper output)
{
    private static IReadOnlyList<string> Lines { get; } =
        [.. File.ReadLines(Repository.PathOf("tests", "Loadmark.Workshop.Tests", "Asking", "plug-in-pairs.txt")).Where(static line => line.Length > 0 && line[0] != '#')];

    [Fact]
    public void Every_pair_is_answered_as_decided()
    {
        Assert.True(Lines.Count >= 200);
        var wrong = new List<string>();
        foreach (var line in Lines)
        {
            var parts = line.Split('|', StringSplitOptions.TrimEntries);
            var expected = parts[0].Split('/');
            var answer = Answer(parts);
            if (!expected.Contains(answer.Word))
                wrong.Add($"{answer.Word}: {line}\n    {answer.Sentence}");
        }

        output.WriteLine($"{Lines.Count - wrong.Count} of {Lines.Count} as decided");
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    private static (string Word, string Sentence) Answer(string[] parts)
    {
        var options = parts[3];
        var question = new PlugInQuestion
        {
            Loads = parts[1].Split(";;", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries),
            Supplies = parts[2].Split(";;", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries),
            IsChain = options.Contains("chain", StringComparison.Ordinal),
            Mains = options.IndexOf("mains ", StringComparison.Ordinal) is >= 0 and var at ? options[(at + "mains ".Length)..] : null,
        };
        if (AskedRig.Of(question, out var complaint) is not { } asked)
            return ("unread", complaint);
        var answer = PlugInAdvisor.Answer(asked, TestContext.Current.CancellationToken);
        return (answer.Verdict switch
        {
            PlugInVerdict.Yes => "yes",
            PlugInVerdict.YesIf => "yes-if",
            PlugInVerdict.No => "no",
            _ => "find-out",
        }, $"{answer.Sentence} {string.Join("; ", answer.Ifs)}");
    }
}
