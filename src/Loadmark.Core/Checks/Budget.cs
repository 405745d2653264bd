using System.Collections.Immutable;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>A limit with what is asked of it: of an outlet, of outlets in parallel, of a bank or of a supply.</summary>
internal sealed class Budget
{
    /// <summary>
    /// Sums and limits may hold quotients (6 W ÷ 9 V), whose last digit is rounded: what differs by less than this many
    /// decimals is equal, so that 6 W on a limit of 6 W is within it.
    /// </summary>
    private const int Decimals = 12;

    private readonly List<BudgetPart> _parts = new(1);
    private Dictionary<WiredLoad, int>? _places;

    /// <summary>What has the limit, in words: "brick/5" or "brick in all".</summary>
    public required string Holder { get; init; }

    /// <summary>The ids of what has the limit.</summary>
    public required ValueList<string> Subjects { get; init; }

    /// <summary>Whether the figures are watts; amps otherwise.</summary>
    public required bool InWatts { get; init; }

    /// <summary>Where a load goes to relieve the limit: "another outlet".</summary>
    public required string Elsewhere { get; init; }

    /// <summary>The limit in amps or watts; null when nothing tells.</summary>
    public required decimal? Limit { get; init; }

    /// <summary>The limits of the outlets in parallel that it is of, in amps, each known; empty for any other budget.</summary>
    public ImmutableArray<decimal> ParallelLimits { get; init; } = [];

    /// <summary>What the limit bears for a moment, in the limit's unit; null when not stated.</summary>
    public decimal? Surge { get; init; }

    /// <summary>How long the limit bears that; null when not stated.</summary>
    public Seconds? SurgeDuration { get; init; }

    /// <summary>What is asked of the limit, load by load.</summary>
    public List<BudgetPart> Parts => _parts;

    /// <summary>The sum of the known running draws.</summary>
    public decimal Run { get; private set; }

    /// <summary>The sum of the known starting draws.</summary>
    public decimal Start { get; private set; }

    /// <summary>Whether what every load asks of the limit is known, so that the sums are whole.</summary>
    public bool IsWhole { get; private set; } = true;

    /// <summary>Whether the running sum is over the limit.</summary>
    public bool RunsOver => Limit is { } limit && IsOver(Run, limit);

    /// <summary>Whether an amount is over a mark by more than rounding.</summary>
    public static bool IsOver(decimal amount, decimal mark) => amount > mark && Math.Round(amount - mark, Decimals) > 0;

    /// <summary>Adds a load.</summary>
    /// <param name="load">The load.</param>
    /// <param name="factor">1 for amps, the voltage for watts, times the outlet's share; null when the voltage is not known.</param>
    /// <param name="mayRepeat">Whether the load may be in the budget already, by way of a joined outlet.</param>
    public void Add(WiredLoad load, decimal? factor, bool mayRepeat)
    {
        var run = (load.Rating.Running?.Value.Value ?? 0) * (factor ?? 0);
        var start = (load.Rating.Starting?.Value.Value ?? 0) * (factor ?? 0);
        var isKnown = load.Rating.Running is not null && factor is not null;
        Run += run;
        Start += start;
        IsWhole &= isKnown;
        if (mayRepeat && !(_places ??= []).TryAdd(load, _parts.Count))
        {
            var place = _places[load];
            var before = _parts[place];
            _parts[place] = new BudgetPart(load, before.Run + run, before.Start + start, before.IsKnown && isKnown);
        }
        else
        {
            _parts.Add(new BudgetPart(load, run, start, isKnown));
        }
    }

    /// <summary>The loads of which nothing tells what they ask of it.</summary>
    public List<string> UnknownLoads()
    {
        var unknown = new List<string>();
        foreach (var part in _parts)
        {
            if (!part.IsKnown)
                unknown.Add(part.Load.Id);
        }

        return unknown;
    }

    /// <summary>What has the limit and its loads, as subjects.</summary>
    public ValueList<string> SubjectsAndLoads() =>
        [.. Subjects, .. _parts.Select(part => part.Load.Id).Distinct(StringComparer.Ordinal)];

    /// <summary>An amount of this budget with its unit.</summary>
    public string Text(decimal amount) => InWatts ? new Watts(amount).ToString() : new Amps(amount).ToString();

    /// <summary>The sum in words: "drive-3 12 mA + chorus-1 45 mA = 57 mA"; what is not known stands as a question mark.</summary>
    public string Sum(bool starting)
    {
        const int mostShown = 8;
        if (_parts.Count == 1)
            return Term(_parts[0], starting);

        var shown = _parts.Count <= mostShown ? _parts : Largest(starting, mostShown);
        var terms = string.Join(" + ", shown.Select(part => Term(part, starting)));
        var total = Text(starting ? Start : Run) + (IsWhole ? "" : " and more");
        var rest = _parts.Count - shown.Count;
        return rest == 0 ? $"{terms} = {total}" : $"{terms} + {rest} more loads = {total}";
    }

    /// <summary>What to take off to come down to a share of the limit: the smallest load that suffices, else the amount.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="usable">The share of it that may be used, above 0 and up to 1.</param>
    /// <param name="starting">Whether the starting draws count; the running ones otherwise.</param>
    public string Relief(decimal limit, decimal usable, bool starting)
    {
        var excess = (starting ? Start : Run) - (usable * limit);
        BudgetPart? best = null;
        foreach (var part in _parts)
        {
            var amount = starting ? part.Start : part.Run;
            if (amount >= excess && (best is null || amount < (starting ? best.Start : best.Run)))
                best = part;
        }

        if (best is { } one && _parts.Count > 1)
            return $"Move {one.Load.Id} ({Text(starting ? one.Start : one.Run)}) to {Elsewhere}.";
        return _parts.Count > 1
            ? $"Move loads of at least {Text(Up(excess))} in all to {Elsewhere}."
            : $"Move {_parts[0].Load.Id} to {Elsewhere} that gives {Text(Up((starting ? Start : Run) / usable))} or more.";
    }

    /// <summary>A need rounded up to three digits, so that what is advised is enough as it is printed.</summary>
    private static decimal Up(decimal amount)
    {
        var step = 1m;
        while (amount < step * 100 && step > 1e-6m)
            step /= 10;
        return Math.Ceiling(amount / step) * step;
    }

    private string Term(BudgetPart part, bool starting)
    {
        var amount = starting ? part.Start : part.Run;
        if (!part.IsKnown && amount == 0)
            return $"{part.Load.Id} ?";
        var figure = starting ? part.Load.Rating.Starting : part.Load.Rating.Running;
        return $"{part.Load.Id} {Text(amount)}{(figure is { IsAssumed: true } ? " (assumed)" : "")}";
    }

    private List<BudgetPart> Largest(bool starting, int count) =>
        [.. _parts.OrderByDescending(part => starting ? part.Start : part.Run).Take(count)];
}
