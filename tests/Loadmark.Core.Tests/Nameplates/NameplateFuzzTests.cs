using System.Diagnostics;

namespace Loadmark.Core.Tests.Nameplates;

public sealed class NameplateFuzzTests
{
    /// <summary>How many labels are tried; LOADMARK_FUZZ_LABELS sets another number, for a longer run than every build needs.</summary>
    private static readonly int Inputs = int.TryParse(Environment.GetEnvironmentVariable("LOADMARK_FUZZ_LABELS"), out var inputs) ? inputs : 50_000;

    private static readonly string[] Labels = [.. LabelTable.Rows.Select(row => row.Label), .. TechnicianLabels.All.Select(row => row.Label)];
    private const string InTheWay = "0123456789.,-–~=⎓/;:()+ \n\tVvAaWwmMkxXDCdc⊖⊕•oCΩ±×\u00A0\u200B\uD83D\uDE00\0９Ｖ…\"'%#@&|*_";

    /// <summary>The same inputs on every run. The bound on time is generous: it is to find a hang, not to measure.</summary>
    [Fact]
    public void Mutated_labels_and_random_text_never_throw_and_lose_nothing()
    {
        var random = new Random(20_260_101);
        var clock = Stopwatch.StartNew();
        for (var i = 0; i < Inputs; i++)
            Coverage.Check(i % 4 == 0 ? RandomText(random) : Mutate(random));
        Assert.True(clock.Elapsed < TimeSpan.FromMilliseconds(Math.Max(60_000, Inputs)), $"{clock.Elapsed}");
    }

    [Theory]
    [InlineData("9V ")]
    [InlineData("1/")]
    [InlineData("1-")]
    [InlineData("9 or ")]
    [InlineData("9, ")]
    [InlineData("((((")]
    [InlineData("-(o-")]
    [InlineData("AC/")]
    [InlineData("C-")]
    [InlineData("tip ")]
    [InlineData("max ")]
    [InlineData("~")]
    [InlineData("- ")]
    [InlineData("s/n:")]
    [InlineData("PX-")]
    [InlineData("d.c.")]
    [InlineData("mA")]
    [InlineData("\n")]
    [InlineData("the ")]
    [InlineData("50Hz ")]
    [InlineData("3mA ")]
    public void A_megabyte_of_one_thing_is_read_in_no_time(string piece)
    {
        var text = string.Concat(Enumerable.Repeat(piece, 1_000_000 / piece.Length));
        var clock = Stopwatch.StartNew();
        Coverage.Check(text);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(30), $"{clock.Elapsed}");
    }

    private static string RandomText(Random random)
    {
        var characters = new char[random.Next(0, 80)];
        for (var i = 0; i < characters.Length; i++)
            characters[i] = random.Next(3) == 0 ? (char)random.Next(0x10000) : InTheWay[random.Next(InTheWay.Length)];
        return new string(characters);
    }

    private static string Mutate(Random random)
    {
        var characters = Labels[random.Next(Labels.Length)].ToList();
        for (var changes = random.Next(1, 6); changes > 0; changes--)
        {
            var at = random.Next(characters.Count + 1);
            switch (random.Next(4))
            {
                case 0:
                    characters.Insert(at, InTheWay[random.Next(InTheWay.Length)]);
                    break;
                case 1 when at < characters.Count:
                    characters.RemoveAt(at);
                    break;
                case 2 when at < characters.Count:
                    characters[at] = InTheWay[random.Next(InTheWay.Length)];
                    break;
                default:
                    characters.InsertRange(at, Labels[random.Next(Labels.Length)]);
                    break;
            }
        }

        return string.Concat(characters);
    }
}
