using CsvHelper;

namespace Loadmark.Circuits.Tests;

/// <summary>One line of Data/worked_examples.csv.</summary>
/// <param name="Id">Its identifier.</param>
/// <param name="Published">The answer that is printed.</param>
/// <param name="Rounding">How far the exact answer is from the printed one, as a share.</param>
internal sealed record WorkedExample(string Id, double Published, double Rounding)
{
    /// <summary>The example with an identifier, which must have been read in its source.</summary>
    public static WorkedExample Of(string id)
    {
        using var csv = CsvReader.FromFile(Path.Combine(AppContext.BaseDirectory, "Data", "worked_examples.csv"), new CsvReaderOptions());
        while (csv.Read())
        {
            string Cell(string column) => csv.GetString(csv.Headers.ToList().IndexOf(column));
            if (Cell("id") != id)
                continue;
            Assert.Equal("read", Cell("read_or_memory"));
            Assert.NotEqual("", Cell("source"));
            return new WorkedExample(id, double.Parse(Cell("published_answer")), double.Parse(Cell("rel_diff")));
        }

        throw new ArgumentException($"There is no example {id}.", nameof(id));
    }

    /// <summary>Holds a value to the printed one, as closely as it was rounded for print and never more loosely than 2 %.</summary>
    public void Check(double actual)
    {
        Assert.True(Rounding < 0.02, $"{Id}: the printed answer is too coarse to check against.");
        Solved.Near(Published, actual, (1.05 * Rounding) + 1e-5);
    }
}
