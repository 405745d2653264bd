using Loadmark.Reference.Figures;

namespace Loadmark.Reference.Laws;

/// <summary>
/// Ohm's law, the power law, series and parallel against the worked examples of OpenStax University Physics vol. 2 and
/// Kuphaldt, Lessons in Electric Circuits vol. I; each row names its own place there.
/// </summary>
[Trait("Source", "OpenStax University Physics vol. 2; Kuphaldt, Lessons in Electric Circuits vol. I")]
public sealed class WorkedExampleTests
{
    public static IEnumerable<TheoryDataRow<string>> Computed() => ReferenceTable.Read("worked_examples")
        .Where(row => !WorkedExamples.LeftOut.ContainsKey(row["topic"]))
        .Select(row => new TheoryDataRow<string>(row["id"]) { TestDisplayName = $"{row["id"]}: {row["topic"]}, {row["asked"]} [{Place(row)}]" });

    [Theory]
    [MemberData(nameof(Computed))]
    public void Computes_what_the_book_prints(string id)
    {
        var row = ReferenceTable.Row("worked_examples", "id", id);
        Assert.True(row.WasRead, $"{id} was not read in its source.");

        var computed = WorkedExamples.Compute(row);

        Assert.NotNull(computed);
        Printed.Agrees(row.Number("published_answer"), computed.Value, Place(row));
    }

    [Fact]
    public void Every_example_is_computed_or_left_out_by_its_topic()
    {
        var rows = ReferenceTable.Read("worked_examples");
        var dropped = rows.Where(row => !WorkedExamples.LeftOut.ContainsKey(row["topic"]) && WorkedExamples.Compute(row) is null);
        var both = rows.Where(row => WorkedExamples.LeftOut.ContainsKey(row["topic"]) && WorkedExamples.Compute(row) is not null);

        Assert.Empty(dropped.Select(row => row["id"]));
        Assert.Empty(both.Select(row => row["id"]));
        Assert.Subset(rows.Select(row => row["topic"]).ToHashSet(), WorkedExamples.LeftOut.Keys.ToHashSet());
    }

    /// <summary>Where an example prints all three of volts, amps and ohms or watts, each follows from the other two.</summary>
    [Theory]
    [InlineData("os9-14", 115, 20, 2300)]
    [InlineData("ku-01", 18, 6, 108)]
    public void Power_turns_round(string id, int volts, int amps, int watts)
    {
        var place = Place(ReferenceTable.Row("worked_examples", "id", id));

        Printed.Agrees(watts, (new Volts(volts) * new Amps(amps)).Value, place);
        Printed.Agrees(watts, (new Amps(amps) * new Volts(volts)).Value, place);
        Printed.Agrees(amps, (new Watts(watts) / new Volts(volts)).Value, place);
        Printed.Agrees(volts, (new Watts(watts) / new Amps(amps)).Value, place);
    }

    [Theory]
    [InlineData("ku-03", 10, 2, 5)]
    [InlineData("ku-01", 18, 6, 3)]
    public void Ohms_law_turns_round(string id, int volts, int amps, int ohms)
    {
        var place = Place(ReferenceTable.Row("worked_examples", "id", id));

        Printed.Agrees(volts, (new Amps(amps) * new Ohms(ohms)).Value, place);
        Printed.Agrees(amps, (new Volts(volts) / new Ohms(ohms)).Value, place);
        Printed.Agrees(ohms, (new Volts(volts) / new Amps(amps)).Value, place);
    }

    /// <summary>The source without the repository it was read in, which the table has.</summary>
    private static string Place(ReferenceRow row) => row["source"].Split(" (repo ")[0];
}
