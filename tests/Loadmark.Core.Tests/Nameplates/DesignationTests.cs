using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Tests.Nameplates;

/// <summary>
/// Designations assert nothing: every one that the two systems for valves can make, the way they are built (value from memory: the
/// American system gives the heater's volts, letters, the number of elements and a suffix; the European one a letter for the heater, a
/// letter for each system and a number), and those of transistors and standards.
/// </summary>
public sealed class DesignationTests
{
    private static readonly string[] Heaters = ["0", "1", "2", "3", "5", "6", "7", "12", "25", "35", "50", "117"];
    private static readonly string[] Suffixes = ["", "G", "GT", "GC", "GTA", "WA", "GTB"];

    [Fact]
    public void No_valve_of_the_American_system_is_a_figure()
    {
        foreach (var name in Rounds.Some(AmericanNames()))
            AssertSaysNothing(name);
    }

    private static IEnumerable<string> AmericanNames() =>
        from heater in Heaters
        from first in "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
        from second in (string[])["", "A", "B", "C", "F", "J", "L", "N", "Q", "T", "U", "V", "W", "X", "Z"]
        from elements in Enumerable.Range(2, 7)
        from suffix in Suffixes
        select $"{heater}{first}{second}{elements}{suffix}";

    [Fact]
    public void No_valve_of_the_European_system_is_a_figure()
    {
        foreach (var heater in "ADEGPU")
        {
            foreach (var systems in (string[])["A", "B", "C", "F", "H", "K", "L", "M", "Y", "Z", "CC", "CF", "CH", "CL", "BC", "BF", "AF", "LL"])
            {
                foreach (var number in (string[])["34", "41", "80", "81", "82", "83", "84", "86", "88", "90", "91", "180", "183", "808"])
                    AssertSaysNothing($"{heater}{systems}{number}");
            }
        }
    }

    [Theory]
    [InlineData("KT66")]
    [InlineData("KT88")]
    [InlineData("5881")]
    [InlineData("EL34 6CA7")]
    [InlineData("12AX7A")]
    [InlineData("12 AX 7")]
    [InlineData("2N3904")]
    [InlineData("BC109C")]
    [InlineData("AC128")]
    [InlineData("AC 128")]
    [InlineData("OC44")]
    [InlineData("1N4148")]
    [InlineData("TL072 NE555 LM386N-1")]
    [InlineData("IEC 62368-1:2018")]
    [InlineData("EN 55032:2015 class B")]
    [InlineData("US Pat. 5,789,012")]
    public void Other_designations_are_no_figures(string text) => AssertSaysNothing(text);

    private static void AssertSaysNothing(string text)
    {
        foreach (var label in (string[])[text, $"{text}, 9V 100mA", $"9V 100mA {text}"])
        {
            var facts = LabelFacts.Of(NameplateReader.Read(label));
            if (label == text ? facts.Count > 0 : facts is not ["9 V 100 mA"])
                Assert.Fail($"{label}: {string.Join("; ", facts)}");
        }
    }
}
