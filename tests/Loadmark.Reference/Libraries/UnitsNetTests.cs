using System.Globalization;
using CsCheck;
using UnitsNet;

namespace Loadmark.Reference.Libraries;

/// <summary>The program's units and laws against UnitsNet 5.75, a general library of physical quantities.</summary>
[Trait("Source", "UnitsNet 5.75.1")]
public sealed class UnitsNetTests
{
    /// <summary>UnitsNet computes in binary floating point, which holds 15 digits.</summary>
    private const double Binary = 1e-12;

    private static readonly Gen<decimal> Figure =
        Gen.Select(Gen.Int[1, 999_999], Gen.Int[0, 5], (digits, places) => new decimal(digits, 0, 0, false, (byte)places));

    public static IEnumerable<TheoryDataRow<string, string>> Spellings() =>
        from unit in UnitSpellings.All
        from word in unit.Value.Words.Keys
        select new TheoryDataRow<string, string>(unit.Key, word) { TestDisplayName = $"{word} as {unit.Key} [UnitsNet 5.75.1]" };

    [Theory]
    [MemberData(nameof(Spellings))]
    public void Reads_a_spelling_as_the_unit_it_means(string unit, string word)
    {
        var (si, words) = UnitSpellings.All[unit];
        Figure.Sample(figure =>
        {
            var expected = (decimal)UnitConverter.Convert((double)figure, words[word], si);
            var text = string.Create(CultureInfo.InvariantCulture, $"{figure} {word}");
            var read = Read(unit, text, out var largest);

            // Past the largest value a figure is refused, which is no matter of units.
            return expected > largest * 0.999m || (read is { } value && Same((double)value, (double)expected));
        });
    }

    /// <summary>
    /// Where UnitsNet knows a spelling itself, it takes it for the same unit. Not so <c>MA</c>, which it takes for
    /// megaamperes, and <c>Ma</c>: on a label for low voltage both are a milliampere in capitals.
    /// </summary>
    [Fact]
    public void UnitsNet_takes_the_spellings_it_knows_for_the_same_units()
    {
        var known = 0;
        foreach (var (_, words) in UnitSpellings.All.Values)
        {
            foreach (var (word, unit) in words.Where(pair => pair.Key is not ("MA" or "Ma")))
            {
                if (!UnitParser.Default.TryParse(word, unit.GetType(), CultureInfo.InvariantCulture, out var taken))
                    continue;
                known++;
                Assert.True(taken.Equals(unit), $"UnitsNet takes {word} for {taken}, not {unit}.");
            }
        }

        Assert.InRange(known, 25, 100);
    }

    [Fact]
    public void Laws_are_those_of_UnitsNet() => Gen.Select(Figure, Figure).Sample((first, second) =>
    {
        var (a, b) = ((double)first, (double)second);
        var volts = ElectricPotential.FromVolts(a);
        var amps = ElectricCurrent.FromAmperes(b);
        var ohms = ElectricResistance.FromOhms(b);
        var watts = Power.FromWatts(a);

        return Same((double)(new Volts(first) * new Amps(second)).Value, (double)(volts * amps).Watts)
            && Same((double)(new Amps(second) * new Volts(first)).Value, (double)(amps * volts).Watts)
            && Same((double)(new Volts(first) / new Ohms(second)).Value, (volts / ohms).Amperes)
            && Same((double)(new Volts(first) / new Amps(second)).Value, (volts / amps).Ohms)
            && Same((double)(new Amps(first) * new Ohms(second)).Value, (ElectricCurrent.FromAmperes(a) * ohms).Volts)
            && Same((double)(new Watts(first) / new Volts(second)).Value, (watts / ElectricPotential.FromVolts(b)).Amperes)
            && Same((double)(new Watts(first) / new Amps(second)).Value, (watts / amps).Volts);
    });

    /// <summary>Why quantities are decimal: three loads that fill an outlet exactly are over its limit in binary.</summary>
    [Fact]
    public void Sums_at_a_limit_are_exact_here_and_not_in_binary()
    {
        var ours = new Amps(0.165m) + new Amps(0.280m) + new Amps(0.055m);
        var binary = ElectricCurrent.FromAmperes(0.165) + ElectricCurrent.FromAmperes(0.280) + ElectricCurrent.FromAmperes(0.055);

        Assert.False(ours > new Amps(0.5m));
        Assert.True(binary > ElectricCurrent.FromAmperes(0.5));
    }

    private static bool Same(double ours, double theirs) => Math.Abs(ours - theirs) <= Binary * Math.Abs(theirs);

    /// <summary>The value the program reads, null where it refuses; and the largest it takes of the unit.</summary>
    private static decimal? Read(string unit, string text, out decimal largest) => unit switch
    {
        nameof(Volt) => Read<Volt>(text, out largest),
        nameof(Ampere) => Read<Ampere>(text, out largest),
        nameof(Watt) => Read<Watt>(text, out largest),
        nameof(VoltAmpere) => Read<VoltAmpere>(text, out largest),
        nameof(Ohm) => Read<Ohm>(text, out largest),
        nameof(Second) => Read<Second>(text, out largest),
        nameof(Metre) => Read<Metre>(text, out largest),
        nameof(SquareMetre) => Read<SquareMetre>(text, out largest),
        nameof(Farad) => Read<Farad>(text, out largest),
        nameof(Hertz) => Read<Hertz>(text, out largest),
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "No such unit."),
    };

    private static decimal? Read<TUnit>(string text, out decimal largest)
        where TUnit : struct, IUnit
    {
        largest = TUnit.Largest;
        return QuantityReader.TryRead<TUnit>(text, out var quantity, out _) ? quantity.Value : null;
    }
}
