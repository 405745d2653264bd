using Loadmark.Core.Rigs;
using Loadmark.Planning.Search;

namespace Loadmark.Planning.Explaining;

/// <summary>
/// Asks the planner about a rig as it would be with fewer loads, more outlets or other leads. Each question gets a share of the time that
/// all of them have together.
/// </summary>
internal sealed class RigTrials
{
    /// <summary>The share of the whole time that one question may take.</summary>
    private const double ShareOfTime = 0.1;

    private readonly PlanOptions _options;
    private readonly TimeSpan _limit;
    private readonly TimeProvider _time;
    private readonly long _begin;
    private readonly CancellationToken _cancellation;

    /// <summary>Prepares to ask.</summary>
    /// <param name="rig">The rig as it is, with its pinned feeds only.</param>
    /// <param name="options">How it was planned; its time limit holds for all questions together.</param>
    /// <param name="time">The clock for that.</param>
    /// <param name="cancellation">Stops asking.</param>
    public RigTrials(Rig rig, PlanOptions options, TimeProvider time, CancellationToken cancellation)
    {
        Rig = rig;
        _options = options with { TimeLimit = options.TimeLimit * ShareOfTime, Progress = null, FewestMoves = false };
        _time = time;
        _begin = time.GetTimestamp();
        _cancellation = cancellation;
        _limit = options.TimeLimit;
    }

    /// <summary>The rig as it is, with its pinned feeds only.</summary>
    public Rig Rig { get; }

    /// <summary>The supplies that may be used; null for all.</summary>
    public IReadOnlySet<string>? Only => _options.Only;

    /// <summary>Whether supplies of one board may feed loads of another.</summary>
    public bool AcrossBoards => _options.AcrossBoards;

    /// <summary>Whether to ask nothing more.</summary>
    public bool IsOver => IsSpent(1);

    /// <summary>The rig's load of a tag.</summary>
    public Load LoadOf(string id) => Rig.Loads.Items.First(load => load.Id == id);

    /// <summary>Whether a share of the time is used up, or nobody waits any longer.</summary>
    /// <param name="share">The share, 0 to 1.</param>
    public bool IsSpent(double share) => _cancellation.IsCancellationRequested || _time.GetElapsedTime(_begin) > _limit * share;

    /// <summary>Plans an altered rig.</summary>
    public PlanResult Plan(Rig rig) => RigPlanner.Plan(rig, _options with { Only = OnlyWith(rig) }, _cancellation);

    /// <summary>Whether every load of an altered rig can be fed, and that is known.</summary>
    public bool Holds(Rig rig) => FeedsAll(rig) is true;

    /// <summary>Whether not every load of an altered rig can be fed, and that is known.</summary>
    public bool Fails(Rig rig) => FeedsAll(rig) is false;

    /// <summary>A wiring of an altered rig that feeds every load, and in which the rules find no harm and nothing that fails.</summary>
    /// <param name="rig">The altered rig.</param>
    /// <param name="isBrief">Whether only a short local search is made, which may miss one.</param>
    /// <returns>Null where none was found.</returns>
    public PlanResult? Mended(Rig rig, bool isBrief = false) =>
        RigPlanner.FeedAll(rig, _options with { Only = OnlyWith(rig), IsBrief = isBrief }, _cancellation);

    private bool? FeedsAll(Rig rig) => RigPlanner.CanFeedAll(rig, _options with { Only = OnlyWith(rig) }, _cancellation);

    /// <summary>What is added to the rig may always be used.</summary>
    private HashSet<string>? OnlyWith(Rig rig)
    {
        if (_options.Only is not { } only)
            return null;
        var added = rig.Supplies.Items.Select(static supply => supply.Id)
            .Except(Rig.Supplies.Items.Select(static supply => supply.Id), StringComparer.Ordinal);
        return new HashSet<string>(only.Concat(added), StringComparer.Ordinal);
    }
}
