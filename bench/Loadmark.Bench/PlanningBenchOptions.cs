using System.Globalization;

namespace Loadmark.Bench;

/// <summary>What the planning bench runs.</summary>
/// <param name="Sizes">The numbers of loads.</param>
/// <param name="Seeds">Rigs a size; null for as many as the size allows in a bearable time.</param>
/// <param name="Alone">Whether to leave out what is compared; nothing is written then.</param>
internal sealed record PlanningBenchOptions(IReadOnlyList<int> Sizes, int? Seeds, bool Alone)
{
    private static readonly int[] AllSizes = [6, 12, 20, 40, 60, 100, 200, 500];

    /// <summary>How many rigs of a size.</summary>
    public int SeedsFor(int size) => Seeds ?? size switch { <= 20 => 40, <= 60 => 20, <= 100 => 10, <= 200 => 6, _ => 4 };

    /// <summary>Reads <c>[SEEDS] [--sizes 6,12] [--alone]</c>; null when it cannot be read.</summary>
    public static PlanningBenchOptions? Read(ReadOnlySpan<string> args)
    {
        var options = new PlanningBenchOptions(AllSizes, null, false);
        for (var place = 0; place < args.Length; place++)
        {
            if (args[place] == "--sizes" && place + 1 < args.Length)
            {
                var sizes = args[++place].Split(',').Select(text => int.TryParse(text, CultureInfo.InvariantCulture, out var size) ? size : 0).ToArray();
                if (sizes.Any(size => size < 1))
                    return null;
                options = options with { Sizes = sizes };
            }
            else if (args[place] == "--alone")
            {
                options = options with { Alone = true };
            }
            else if (int.TryParse(args[place], CultureInfo.InvariantCulture, out var seeds) && seeds > 0)
            {
                options = options with { Seeds = seeds };
            }
            else
            {
                return null;
            }
        }

        return options;
    }
}
