using System.Globalization;
using System.Text;

namespace Loadmark.Planning.Tests;

/// <summary>A bin packing instance with its published or proven optimum; see Data/binpacking/SOURCE.md.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Capacity">What a bin holds.</param>
/// <param name="Sizes">The items.</param>
/// <param name="Fewest">The fewest bins.</param>
internal sealed record BinPackingInstance(string Name, int Capacity, int[] Sizes, int Fewest)
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Data", "binpacking");

    /// <summary>All instances.</summary>
    public static IEnumerable<BinPackingInstance> All()
    {
        foreach (var fields in File.ReadLines(Path.Combine(Folder, "optima.csv")).Skip(1).Select(static line => line.Split(',')))
        {
            var numbers = Read(fields[0], fields[1]);
            yield return new BinPackingInstance(fields[1], numbers[0], numbers[2..(2 + numbers[1])], Number(fields[5]));
        }
    }

    /// <summary>The items as loads, and as many alike outlets as there are bins, each with a chain.</summary>
    public string RigOf(int outlets)
    {
        var text = new StringBuilder("rig: Bins\nheadroom: 0 %\nloads:\n");
        for (var item = 0; item < Sizes.Length; item++)
            text.Append(CultureInfo.InvariantCulture, $"  I{item + 1}: {{ label: \"9 V DC {Sizes[item]} mA\" }}\n");
        text.Append(CultureInfo.InvariantCulture, $"supplies:\n  bins:\n    label: \"INPUT 100-240V~ 50/60Hz\"\n    isolated: true\n    outlets: {{ 1-{outlets}: 9 V DC {Capacity} mA }}\n");
        text.Append(CultureInfo.InvariantCulture, $"leads:\n  chain: {{ type: daisy chain, count: {outlets} }}\n");
        return text.ToString();
    }

    /// <summary>Capacity, number of items, in a file of many the best number, then the sizes.</summary>
    private static int[] Read(string file, string name)
    {
        var words = File.ReadAllText(Path.Combine(Folder, file)).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        var at = Array.IndexOf(words, name);
        return at < 0
            ? [Number(words[1]), Number(words[0]), .. words[2..].Select(Number)]
            : [Number(words[at + 1]), Number(words[at + 2]), .. words[(at + 4)..].TakeWhile(static word => char.IsDigit(word[0])).Select(Number)];
    }

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
