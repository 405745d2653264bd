using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>A limit with what is asked of it: of an outlet, of outlets in parallel, of a bank or of a supply.</summary>
internal sealed class Budget
{
    private readonly List<BudgetPart> _parts = [];

    /// <summary>What has the limit, in words: "brick/5" or "brick in all".</summary>
    public required string Holder { get; init; }

    /// <summary>The ids of what has the limit.</summary>
    public required ValueList<string> Subjects { get; init; }

    /// <summary>Whether the figures are watts; amps otherwise.</summary>
    public required bool InWatts { get; init; }

    /// <summary>The limit in amps or watts; null when nothing tells.</summary>
    public required decimal? Limit { get; init; }

    /// <summary>What it bears for a moment, in the limit's unit; null when not stated.</summary>
    public decimal? Surge { get; init; }

    /// <summary>How long it bears that; null when not stated.</summary>
    public Seconds? SurgeDuration { get; init; }

    /// <summary>What is asked of it, load by load.</summary>
    public IReadOnlyList<BudgetPart> Parts => _parts;

    /// <summary>The sum of the known running draws.</summary>
    public decimal Run { get; private set; }

    /// <summary>The sum of the known starting draws.</summary>
    public decimal Start { get; private set; }

    /// <summary>The loads whose draw nothing tells.</summary>
    public IEnumerable<string> UnknownLoads => _parts.Where(part => !part.IsKnown).Select(part => part.Load.Id);

    /// <summary>Adds a load at a factor: 1 for amps, the voltage for watts, a share for one of several outlets.</summary>
    public void Add(WiredLoad load, decimal factor)
    {
        var running = load.Rating.Running;
        var part = new BudgetPart(load, (running?.Value.Value ?? 0) * factor, (load.Rating.Starting?.Value.Value ?? 0) * factor, running is not null);
        _parts.Add(part);
        Run += part.Run;
        Start += part.Start;
    }

    /// <summary>An amount of this budget with its unit.</summary>
    public string Text(decimal amount) => InWatts ? new Watts(amount).ToString() : new Amps(amount).ToString();

    /// <summary>The sum in words: "OD-03 12 mA + CH-01 45 mA = 57 mA".</summary>
    public string Sum(bool starting)
    {
        const int mostShown = 8;
        var total = Text(starting ? Start : Run);
        if (_parts.Count == 1)
            return $"{_parts[0].Load.Id} {total}";

        var shown = _parts.Count <= mostShown ? _parts : Largest(starting, mostShown);
        var terms = string.Join(" + ", shown.Select(part => $"{part.Load.Id} {Text(starting ? part.Start : part.Run)}"));
        var rest = _parts.Count - shown.Count;
        return rest == 0 ? $"{terms} = {total}" : $"{terms} + {rest} smaller = {total}";
    }

    /// <summary>
    /// What to take off to come down to <paramref name="target"/>: the smallest load that suffices, else the amount.
    /// </summary>
    public string Relief(decimal target, bool starting)
    {
        var excess = (starting ? Start : Run) - target;
        BudgetPart? best = null;
        foreach (var part in _parts)
        {
            var amount = starting ? part.Start : part.Run;
            if (amount >= excess && (best is null || amount < (starting ? best.Value.Start : best.Value.Run)))
                best = part;
        }

        if (best is { } one && _parts.Count > 1)
            return $"Move {one.Load.Id} ({Text(starting ? one.Start : one.Run)}) to another outlet.";
        return _parts.Count > 1
            ? $"Move loads of at least {Text(excess)} in all to other outlets."
            : $"Use an outlet that gives {Text(starting ? Start : Run)} or more.";
    }

    private List<BudgetPart> Largest(bool starting, int count) =>
        [.. _parts.OrderByDescending(part => starting ? part.Start : part.Run).Take(count)];
}
