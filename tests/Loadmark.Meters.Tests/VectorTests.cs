using Loadmark.Meters.Scpi;
using Loadmark.Meters.Simulated;

namespace Loadmark.Meters.Tests;

/// <summary>Against the vectors of an open parser's tests; see Data/SOURCE.md.</summary>
public sealed class VectorTests
{
    public static TheoryData<string, string, string> Matching() =>
        [.. VectorRow.Read("scpi_matching").Select(static row => (row[0], row[1], row[2]))];

    public static TheoryData<string, string, string> Numbers() =>
        [.. VectorRow.Read("scpi_numbers").Select(static row => (row[0], row[1], row[2]))];

    [Theory]
    [MemberData(nameof(Matching))]
    public void A_header_matches_its_short_and_its_long_form(string pattern, string header, string matches) =>
        Assert.Equal(matches == "yes", new HeaderPattern(pattern).Matches(header));

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_number_is_as_long_as_published(string text, string isNumber, string taken)
    {
        var form = ScpiNumber.Read(text, out _, out var length);
        Assert.Equal(
            isNumber switch { "yes" => NumberForm.Decimal, "hex" => NumberForm.Hexadecimal, "binary" => NumberForm.Binary, "octal" => NumberForm.Octal, _ => NumberForm.None }, form);
        Assert.Equal(VectorRow.Number(taken), length);
    }

    /// <summary>What the numbers are worth is arithmetic.</summary>
    [Theory]
    [InlineData("-10.5 , ", -10.5)]
    [InlineData("+.5 , ", 0.5)]
    [InlineData("-1 e 3, ", -1000)]
    [InlineData("1.5E12", 1.5e12)]
    [InlineData("+9.02134500E+00", 9.021345)]
    [InlineData("#H123fe5A", 0x123fe5A)]
    [InlineData("#B0111010101", 0b0111010101)]
    [InlineData("#Q17", 15)]
    [InlineData("5.", 5)]
    [InlineData("2 everything", 2)]
    public void A_number_is_worth_what_it_says(string text, double value)
    {
        Assert.NotEqual(NumberForm.None, ScpiNumber.Read(text, out var read, out _));
        Assert.Equal(value, read);
    }

    /// <summary>The published dialogue in its order, with the simulated meter.</summary>
    [Fact]
    public void The_simulated_meter_answers_as_published()
    {
        var rows = VectorRow.Read("scpi_vectors").ToDictionary(static row => row[0], static row => row[1]);
        Assert.Equal(11, rows.Count);
        var meter = new SimulatedMeter([9.02], [0.2]);
        Assert.Equal(4, meter.Answer("*IDN?")!.Split(',').Length);
        Assert.Equal("MA,IN,0,VER;MA,IN,0,VER", rows["*IDN?;*IDN?"]);
        Assert.Equal($"{meter.Answer("*IDN?")};{meter.Answer("*IDN?")}", meter.Answer("*IDN?;*IDN?"));
        Assert.Equal(rows["SYST:ERR:NEXT? when none"], meter.Answer("SYST:ERR:NEXT?"));
        foreach (var question in new[] { "*OPC?", "*TST?", "SYST:VERS?" })
            Assert.Equal(rows[question], meter.Answer(question));

        Assert.Null(meter.Answer("*ESE #H20"));
        Assert.Equal(rows["*ESE #H20 then *ESE?"], meter.Answer("*ESE?"));
        Assert.Null(meter.Answer("*SRE #HFF"));

        Assert.Equal(rows["*SRE #HFF then *SRE?"], meter.Answer("*SRE?"));
        Assert.Null(meter.Answer("ABCD"));
        Assert.StartsWith("100 ", rows["then *STB?"], StringComparison.Ordinal);
        Assert.Equal("100", meter.Answer("*STB?"));
        Assert.Equal(rows["ABCD then *ESR?"].Split(' ')[0], meter.Answer("*ESR?"));
        Assert.Equal("68", meter.Answer("*STB?"));
        Assert.StartsWith(meter.Answer("SYST:ERR:NEXT?")!, rows["SYST:ERR:NEXT? after ABCD"], StringComparison.Ordinal);
        Assert.Equal("0,\"No error\"", meter.Answer("SYSTem:ERRor?"));
        Assert.Equal("0", meter.Answer("*STB?"));
    }
}
