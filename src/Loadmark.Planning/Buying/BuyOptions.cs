using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Buying;

/// <summary>How to choose supplies.</summary>
public sealed record BuyOptions
{
    /// <summary>Up to this many times the price of the cheapest option an option may cost, unless set: 1.5.</summary>
    public const decimal CommonPriceRatio = 1.5m;

    /// <summary>The nameplates of loads to come, for which room is kept; each is planned as a load of the rig.</summary>
    public ValueList<Nameplate> ReservedLoads { get; init; }

    /// <summary>The supplies of the rig that may be used besides what is bought; null for all.</summary>
    public IReadOnlySet<string>? Only { get; init; }

    /// <summary>Whether supplies of one board may feed loads of another; what is bought is of no board, and may feed any.</summary>
    public bool AcrossBoards { get; init; }

    /// <summary>Whether to look beyond the cheapest option for all that are worth choosing between.</summary>
    public bool WithFront { get; init; } = true;

    /// <summary>
    /// Whether to search for the cheapest option that is quiet, where the cheapest is not. A fifth of the time is kept for that, and what
    /// the rest leaves.
    /// </summary>
    public bool WithQuiet { get; init; } = true;

    /// <summary>Up to how many times the price of the cheapest option the others may cost; at least 1.</summary>
    public decimal PriceRatio { get; init; } = CommonPriceRatio;

    /// <summary>
    /// How much lighter than every cheaper option one must be to be listed, in grams, unless it has more to spare by
    /// <see cref="SpareStep"/>; 100 unless set. With zero every difference counts.
    /// </summary>
    public decimal MassStepGrams { get; init; } = 100m;

    /// <summary>
    /// How much more to spare than every cheaper option one must have to be listed, unless it is lighter by
    /// <see cref="MassStepGrams"/>; 5 W unless set. Whole watts count, so that it is at least one.
    /// </summary>
    public Watts SpareStep { get; init; } = new(5m);

    /// <summary>
    /// Told how far it has come; null for nobody. It may be called on several threads, one call at a time not being promised.
    /// </summary>
    public IProgress<BuyProgress>? Progress { get; init; }

    /// <summary>How long to search at the most, the plans of the options not counted; ten seconds unless set.</summary>
    public TimeSpan TimeLimit { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>How long to look at one combination at the most; one second unless set.</summary>
    public TimeSpan CheckTimeLimit { get; init; } = TimeSpan.FromSeconds(1);

    /// <summary>How long to look for the best wiring of one option; two seconds unless set.</summary>
    public TimeSpan PlanTimeLimit { get; init; } = TimeSpan.FromSeconds(2);
}
