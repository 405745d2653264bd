using Loadmark.Core.Acceptance;
using Loadmark.Reference.Figures;

namespace Loadmark.Reference.Measuring;

/// <summary>
/// Risks and probabilities of conformity against figures that go back to JCGM 106:2012. Rows gb-2 and gb-4 are of Student's distribution,
/// gb-5 of a rectangular one: the program has neither.
/// </summary>
[Trait("Source", "guard_band.csv")]
public sealed class GuardBandReferenceTests
{
    /// <summary>One limit, a reading k standard uncertainties inside: the risk is what is left of the normal distribution.</summary>
    [Theory]
    [InlineData("gb-1", 0.01)]
    [InlineData("gb-6", 0.009901)]
    public void The_risk_at_a_published_factor(string id, double risk)
    {
        var row = Row(id);
        var factor = FirstNumber(row["recomputed"].Split(';')[^1]);

        // The risk lies between those at the ends of what is rounded to this factor.
        var half = Printed.HalfUnit(factor);
        Assert.InRange(
            risk, 1 - Within(low: 0, high: null, factor + half, standard: 1), 1 - Within(low: 0, high: null, factor - half, standard: 1));
        Printed.Agrees(FirstNumber(row["published"].Split('k')[^1]), factor, row["source"]);
    }

    /// <summary>The limit is moved by k standard uncertainties where r is k/2: a reading there passes, with the published risk and no more.</summary>
    [Theory]
    [InlineData("gb-1", 0.01)]
    [InlineData("gb-6", 0.009901)]
    public void A_limit_moved_by_a_published_factor_leaves_its_risk(string id, double risk)
    {
        var row = Row(id);
        var factor = FirstNumber(row["recomputed"].Split(';')[^1]);
        var band = new GuardBand { Multiplier = factor / 2 };
        var (limit, width) = (new Ohms(9), new Ohms(factor * 0.02m));
        var expanded = band.Expanded<Ohm>(0.02);
        var at = band.Judge(limit, high: null, limit + width, expanded);
        Assert.Equal((Conformity.Pass, width), (at.Judged, at.GuardBand!.Value));
        Assert.Equal(Conformity.NotSure, band.Judge(limit, high: null, limit + width - new Ohms(1e-9m), expanded).Judged);
        Printed.Within(5e-6m, (decimal)risk, (decimal)(1 - at.Probability!.Value), row["source"]);
    }

    [Fact]
    public void The_risk_at_four_and_a_half_standard_uncertainties()
    {
        var row = Row("gb-3");
        Printed.Agrees(row.Number("published"), (decimal)ConformityProbability.Below(-4.5), row["source"]);
        Printed.Agrees(row.Number("recomputed"), (decimal)ConformityProbability.Below(-4.5), row["source"]);
    }

    [Theory]
    [InlineData("gb-7", 1.0, 0.2, 1.1)]
    [InlineData("gb-8", 1.0, 0.2, 1.7)]
    [InlineData("gb-9", 0, 1, 1.5)]
    public void The_probability_below_a_limit(string id, double reading, double standard, double high)
    {
        var row = Row(id);
        var probability = (decimal)Within(low: null, (decimal)high, (decimal)reading, standard);
        Printed.Within(5e-7m, row.Number("recomputed"), probability, row["source"]);
        if (id == "gb-8")
            Assert.True(probability > 0.998m);
        else
            Printed.Agrees(row.Number("published"), probability, row["source"]);
    }

    /// <summary>The published 0.92 is from memory; the other figure is arithmetic on what is given.</summary>
    [Fact]
    public void The_breakdown_voltage_of_JCGM_106_from_memory()
    {
        var row = Row("gb-10");
        var probability = (decimal)Within(low: null, high: -5.40m, reading: -5.47m, standard: 0.05);
        Printed.Within(5e-7m, row.Number("recomputed"), probability, row["source"]);
        Printed.Agrees(row.Number("published"), probability, row["source"]);
    }

    /// <summary>
    /// Resistors of 1500 Ω: production spread 0.12 Ω, limits ±0.20 Ω, accepted within ±0.18 Ω by a meter of 0.04 Ω. The risks are integrals
    /// over the production (JCGM 106:2012, 9.5); that the printed ones are 0.90, 0.01 and 0.07 is from memory.
    /// </summary>
    [Fact]
    public void The_risks_of_the_resistors()
    {
        Printed.Within(5e-7m, Row("gb-11").Number("recomputed"), (decimal)Within(-0.20m, 0.20m, 0, 0.12), Row("gb-11")["source"]);
        var (consumer, producer) = (0.0, 0.0);
        const double Step = 1e-4;
        for (var n = -12_000; n < 12_000; n++)
        {
            var value = (n + 0.5) * Step;
            var made = Math.Exp(-value * value / (2 * 0.12 * 0.12)) / (0.12 * Math.Sqrt(2 * Math.PI)) * Step;

            // A reading of this value is accepted as often as a value is within the acceptance limits about this reading.
            var accepted = Within(-0.18m, 0.18m, (decimal)value, 0.04);
            if (Math.Abs(value) > 0.20)
                consumer += made * accepted;
            else
                producer += made * (1 - accepted);
        }

        Printed.Within(5e-6m, Row("gb-12").Number("recomputed"), (decimal)consumer, Row("gb-12")["source"]);
        Printed.Within(5e-6m, Row("gb-13").Number("recomputed"), (decimal)producer, Row("gb-13")["source"]);
    }

    /// <summary>As a judgement tells it, from the expanded uncertainty that a meter's printed band comes to.</summary>
    private static double Within(decimal? low, decimal? high, decimal reading, double standard)
    {
        var band = new GuardBand();
        return band.Judge(
            low is { } least ? new Ohms(least) : null, high is { } most ? new Ohms(most) : null, new Ohms(reading), band.Expanded<Ohm>(standard)).Probability!.Value;
    }

    private static ReferenceRow Row(string id) => ReferenceTable.Read("guard_band").Single(row => row["id"] == id);

    private static decimal FirstNumber(string text) =>
        decimal.Parse(text.Split(' ', StringSplitOptions.RemoveEmptyEntries).First(static word => char.IsDigit(word[0])));
}
