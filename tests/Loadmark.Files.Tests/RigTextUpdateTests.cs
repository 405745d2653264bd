using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Tests;

/// <summary>Whatever changes in a rig, the changed text reads as the changed rig, and what nobody touched is as it was.</summary>
public sealed class RigTextUpdateTests
{
    private static readonly int Pairs = Rounds.Of(500);

    [Fact]
    public void Reads_back_as_the_new_rig() =>
        Check.Sample(RigChange.Pairs, pair => AssertUpdates(RigFileWriter.Write(pair.Before), pair.After), iter: Pairs, threads: 2);

    [Fact]
    public void Reads_back_from_JSON_on_one_line() =>
        Check.Sample(RigChange.Pairs, pair => AssertJson(AssertUpdates(YamlToJson.Convert(RigFileWriter.Write(pair.Before)), pair.After)), iter: Pairs, threads: 2);

    [Fact]
    public void Reads_back_from_JSON_on_many_lines() =>
        Check.Sample(
            RigChange.Pairs,
            pair => AssertJson(AssertUpdates(JsonNode.Parse(YamlToJson.Convert(RigFileWriter.Write(pair.Before)))!.ToJsonString(new JsonSerializerOptions { WriteIndented = true }), pair.After)),
            iter: Pairs, threads: 2);

    [Fact]
    public void Keeps_comments_and_line_ends() =>
        Check.Sample(RigChange.Pairs, AssertKeepsComments, iter: Pairs, threads: 2);

    [Fact]
    public void Leaves_the_text_of_an_equal_rig() =>
        Check.Sample(RigGen.Rigs, rig => Assert.Equal(new RigTextUpdate(Commented(rig), true), RigFileEditor.Update(Commented(rig), Fixtures.Read(RigFileWriter.Write(rig)))), iter: Rounds.Of(300));

    private static string AssertUpdates(string text, Rig rig)
    {
        var update = RigFileEditor.Update(text, rig);
        Assert.Equal(rig, Fixtures.Read(update.Text));
        Assert.True(update.CommentsKept, update.Text);
        return update.Text;
    }

    private static void AssertJson(string text) => JsonDocument.Parse(text).Dispose();

    /// <summary>A rig's text with a comment before and behind each line, and line ends of two characters.</summary>
    private static string Commented(Rig rig) => string.Concat(RigFileWriter.Write(rig).TrimEnd('\n').Split('\n')
        .Select((line, number) => $"{new string(' ', Indent(line))}# above {number}.\r\n{line} # behind {number}.\r\n"));

    private static int Indent(string line) => line.Length - line.TrimStart(' ').Length;

    private static void AssertKeepsComments((Rig Before, Rig After) pair)
    {
        var lines = RigFileWriter.Write(pair.Before).TrimEnd('\n').Split('\n');
        var text = AssertUpdates(Commented(pair.Before), pair.After);
        Assert.Equal(text.Count(character => character == '\n'), text.Split("\r\n").Length - 1);

        var unchanged = pair.After.Loads.Where(load => pair.Before.Loads.Any(one => one == load)).Select(load => load.Id).ToHashSet();
        var (section, isKept, at) = ("", false, -1);
        for (var number = 0; number < lines.Length; number++)
        {
            var indent = Indent(lines[number]);
            if (indent == 0)
                (section, at) = (lines[number].Split(':')[0], -1);
            else if (indent == 2 && section == "loads")
                isKept = unchanged.Contains(pair.Before.Loads[++at].Id);

            // Above an entry a comment stays whatever becomes of the entry; within one it stays as the entry does.
            if (indent <= 2 && !(section == "wired" && pair.After.Wired is null && indent > 0))
                Assert.Contains($"# above {number}.\r\n", text, StringComparison.Ordinal);
            if (section == "loads" && at >= 0 && isKept)
                Assert.Contains($"# behind {number}.\r\n", text, StringComparison.Ordinal);
        }
    }
}
