using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Problem;

/// <summary>Loads that are alike in everything a plan looks at.</summary>
internal sealed class LoadGroup(int index, LoadRating rating, bool isInSignal)
{
    /// <summary>The priority of a load that gives none.</summary>
    private const int CommonPriority = 2;

    /// <summary>Its place among the groups.</summary>
    public int Index { get; } = index;

    /// <summary>What each of them needs.</summary>
    public LoadRating Rating { get; } = rating;

    /// <summary>Whether they are in the signal path.</summary>
    public bool IsInSignal { get; } = isInSignal;

    /// <summary>Their places among the rig's loads, ascending.</summary>
    public List<int> Members { get; } = [];

    /// <summary>How many there are.</summary>
    public int Count => Members.Count;

    /// <summary>Running draw in amps; zero when nothing tells.</summary>
    public decimal Run => Rating.Running?.Value.Value ?? 0;

    /// <summary>Starting draw in amps; zero when nothing tells.</summary>
    public decimal Start => Rating.Starting?.Value.Value ?? 0;

    /// <summary>Whether the running draw is known; a load whose draw nothing tells is fed alone.</summary>
    public bool IsDrawKnown => Rating.Running is not null;

    /// <summary>1 to 3.</summary>
    public int Priority => PriorityOf(Rating.Load.Priority);

    /// <summary>Whether their ground is the positive side.</summary>
    public bool IsPositiveGround => Rating.Ground == GroundSide.Positive;

    /// <summary>A priority with the default for one that is not given.</summary>
    public static int PriorityOf(int? given) => given ?? CommonPriority;

    /// <summary>What must be equal for two loads to be alike.</summary>
    public static object Key(LoadRating rating, bool isInSignal) => (
        (rating.Form.Value, rating.Voltage.Value, rating.Running?.Value, rating.Starting?.Value, rating.StartDuration),
        (rating.Polarity.Value, rating.Plug.Value, rating.Ground),
        (rating.IsDigital == true, rating.Load.Isolate, isInSignal, PriorityOf(rating.Load.Priority)));
}
