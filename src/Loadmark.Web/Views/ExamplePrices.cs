namespace Loadmark.Web.Views;

/// <summary>The invented price list that ships as an example, built into this library.</summary>
internal static class ExamplePrices
{
    private const string Name = "examples/harbour-row.prices.csv";

    /// <summary>The text of the example price list.</summary>
    public static string Text
    {
        get
        {
            using var reader = new StreamReader(typeof(ExamplePrices).Assembly.GetManifestResourceStream(Name)
                ?? throw new InvalidOperationException($"{Name} is not built in."));
            return reader.ReadToEnd();
        }
    }
}
