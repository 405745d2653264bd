using CsCheck;
using Loadmark.Core.Texts;

namespace Loadmark.Core.Tests.Texts;

public sealed class TextIndexTests
{
    private static readonly IndexedText[] Things =
    [
        new("delay-2", ["Delay with the long tail", "pit spare", "9V⎓ 300mA"]),
        new("delay-21", ["Delay, short", "", "9V 80mA"]),
        new("drive-3", ["Overdrive, green", "pit", "9V DC 12mA"]),
        new("reverb-1", ["Reverb with a tail", "delay shelf", "9V 120mA"]),
        new("tuner-4", ["Tuner", "", "9V 25mA"]),
        new("brick", ["Eight outlets", "", "INPUT 100-240V~"]),
    ];

    private static readonly TextIndex Index = new(Things);

    [Theory]
    [InlineData("delay-2", "delay-2 delay-21")]
    [InlineData("delay2", "delay-2 delay-21")]
    [InlineData("DELAY 2", "delay-2 delay-21")]
    [InlineData("del", "delay-2 delay-21 reverb-1")]
    [InlineData("delay", "delay-2 delay-21 reverb-1")]
    [InlineData("delay tail", "delay-2 reverb-1")]
    [InlineData("dealy", "delay-2 delay-21 reverb-1")]
    [InlineData("long dealy", "delay-2")]
    [InlineData("tial", "delay-2 reverb-1")]
    [InlineData("ovredriev", "drive-3")]
    [InlineData("overd", "drive-3")]
    [InlineData("delay-o2", "delay-2 delay-21 reverb-1")]
    [InlineData("green pit", "drive-3")]
    [InlineData("300ma", "delay-2")]
    [InlineData("delay tuner", "delay-2 delay-21 tuner-4 reverb-1")]
    [InlineData("BRICK", "brick")]
    [InlineData("xylophone", "")]
    [InlineData(" - ", "")]
    public void Finds_what_was_meant_with_the_best_match_first(string query, string tags) =>
        Assert.Equal(tags, string.Join(' ', Index.Find(query, 10).Select(place => Things[place].Tag)));

    [Fact]
    public void Gives_no_more_than_asked_and_only_what_counts()
    {
        Assert.Equal([0], Index.Find("delay2", 1));
        Assert.Equal([1], Index.Find("dealy", 10, place => place == 1));

        // Where the exact word is only on things that do not count, typos are looked for.
        Assert.Equal([4], Index.Find("tuner", 10, place => place == 4));
        Assert.Equal([1, 3], Index.Find("delay", 10, place => place != 0));
    }

    /// <summary>Every word with one letter changed, left out, doubled or swapped with the next is found again, as long as it is not another's.</summary>
    [Fact]
    public void One_slip_in_a_long_word_is_forgiven()
    {
        string[] words = ["delay", "overdrive", "reverb", "tuner", "outlets", "green", "short"];
        Gen.Select(Gen.OneOf<string>(words), Gen.Int[0, 100], Gen.Int[0, 3], Gen.Char['a', 'z']).Sample((word, at, how, letter) =>
        {
            at %= word.Length;
            var slipped = how switch
            {
                0 => word[..at] + letter + word[(at + 1)..],
                1 => word.Remove(at, 1),
                2 => word.Insert(at, $"{letter}"),
                _ => at + 1 < word.Length ? word[..at] + word[at + 1] + word[at] + word[(at + 2)..] : word,
            };
            var owners = Things.Select((thing, place) => (thing, place)).Where(one => one.thing.Texts.Any(text => text.Contains(word, StringComparison.OrdinalIgnoreCase))).Select(one => one.place);
            var found = Index.Find(slipped, 10);
            Assert.True(owners.All(found.Contains) || found.Any(place => Things[place].Texts.Append(Things[place].Tag).Any(text => text.Contains(slipped, StringComparison.OrdinalIgnoreCase))), $"{slipped}: {string.Join(' ', found)}");
        });
    }

    [Fact]
    public void No_text_makes_it_fail() => Gen.String.Sample(query =>
    {
        var index = new TextIndex([new IndexedText(query, [query]), .. Things]);
        var found = index.Find(query, 10);
        Assert.Equal(found.Distinct(), found);
        Assert.True(!query.Any(char.IsLetterOrDigit) || query.Split(' ', '-').Any(word => word.Length > 64) || found.Contains(0), query);
    });
}
