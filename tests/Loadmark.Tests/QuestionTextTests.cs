using System.Text.RegularExpressions;
using Loadmark.Core.OpenQuestions;
using Loadmark.Files;

namespace Loadmark.Tests;

/// <summary>Questions on the command line: they come last, and what they say to type is what an answer writes.</summary>
public sealed class QuestionTextTests
{
    public static TheoryData<string> Examples =>
        [.. Directory.EnumerateFiles(Repository.PathOf("examples"), "*.rig.yaml").Select(static path => Path.GetFileName(path)!).Order(StringComparer.Ordinal)];

    [Fact]
    public void A_check_ends_in_its_questions_with_what_to_type()
    {
        var output = ProgramRun.WithFiles("check", Repository.PathOf("examples/pit.rig.yaml")).Output;

        var questions = output.IndexOf("Three answers would settle this:", StringComparison.Ordinal);
        Assert.True(questions > output.IndexOf("Sources of the rules", StringComparison.Ordinal));
        Assert.Contains("centre positive: type chorus-1: { polarity: centre positive }", output[questions..], StringComparison.Ordinal);

        // An answer that leads to nothing is no verdict on a rig that has other findings.
        Assert.DoesNotContain("good", output[questions..], StringComparison.Ordinal);
    }

    [Fact]
    public void A_rig_of_which_all_is_known_has_no_questions() =>
        Assert.DoesNotContain("would settle", ProgramRun.WithFiles("check", Repository.PathOf("examples/clean.rig.yaml")).Output, StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Examples))]
    public void What_is_to_be_typed_is_what_an_answer_writes(string example)
    {
        var text = File.ReadAllText(Repository.PathOf($"examples/{example}"));
        var rig = RigFileReader.Read(text, "").Rig!;
        foreach (var answer in QuestionSearch.Of(rig, TestContext.Current.CancellationToken).SelectMany(static question => question.Answers))
        {
            var written = RigFileEditor.Update(text, answer.Apply(rig)).Text;
            foreach (Match typed in Regex.Matches(answer.Line, @"\{ (?<pair>[a-z]+: [^{}]+) \}", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)))
                Assert.Contains(typed.Groups["pair"].Value, written, StringComparison.Ordinal);
        }
    }
}
