using Loadmark.Planning.LocalSearch;
using Loadmark.Planning.Objective;

namespace Loadmark.Planning.Search;

/// <summary>
/// Improves one wiring towards what is proven, each time it is asked to for longer. A large one goes on from where it is; of others many
/// short attempts from the beginning find more than a long one.
/// </summary>
internal sealed class Improver
{
    /// <summary>So many loads make a wiring large.</summary>
    private const int Large = 80;

    /// <summary>The share of the time left that goes into improving at one time.</summary>
    private const double ShareOfTime = 0.2;

    /// <summary>Changes for each load before anything is known.</summary>
    private const int FirstEffort = 100;

    /// <summary>Changes for each load in the first of several attempts.</summary>
    private const int ShortEffort = 400;

    /// <summary>
    /// Changes for each load in all attempts together, at the most; the first time as many as in a short one, then twice as many each time.
    /// </summary>
    private const int MostEffort = 12_800;

    /// <summary>Changes for each load of a large rig in one attempt, at the most.</summary>
    private const int LargeEffort = 6_400;

    /// <summary>How many times a large rig is improved on, each time for longer, before what is proven since is looked at.</summary>
    private const int LargeAttempts = 2;

    /// <summary>How warm a large wiring is improved on that was repaired from a coarse solution: so that it stays much like it.</summary>
    private const double Lukewarm = 3;

    private readonly SimulatedAnnealing _annealing;
    private readonly ObjectiveBounds _bounds;
    private readonly Func<TimeSpan> _left;
    private readonly Action _report;
    private int _effort = ShortEffort;
    private double? _warmth;
    private CancellationToken _enough;

    /// <summary>Begins with a first wiring.</summary>
    /// <param name="space">What wirings are made of.</param>
    /// <param name="bounds">What is proven; looked at whenever it is asked to improve.</param>
    /// <param name="left">How much time is left.</param>
    /// <param name="isOver">Whether to stop.</param>
    /// <param name="report">Called before each attempt.</param>
    public Improver(WiringSpace space, ObjectiveBounds bounds, Func<TimeSpan> left, Func<bool> isOver, Action report)
    {
        _annealing = new SimulatedAnnealing(space, GreedyWiring.Of(space), 1, () => isOver() || _enough.IsCancellationRequested);
        _bounds = bounds;
        _left = left;
        _report = report;
    }

    /// <summary>The best wiring so far.</summary>
    public FoundWiring Best => _annealing.Best;

    /// <summary>Whether the rig is large.</summary>
    public bool IsLarge => _annealing.Loads > Large;

    /// <summary>Whether the best wiring leaves something dark.</summary>
    public bool IsAnyDark => Best.Levels[0] > 0;

    /// <summary>Whether nothing can be better.</summary>
    public bool IsDone => _bounds.AreMetBy(Best.Levels);

    /// <summary>Improves a little.</summary>
    public void Begin() => _annealing.Run(_bounds.Ideal, FirstEffort * _annealing.Loads);

    /// <summary>
    /// Looks for a wiring that feeds all that is not proven to stay dark: whether something does decides what must be told apart.
    /// </summary>
    /// <param name="effort">Changes for each load.</param>
    public void FeedAll(int effort) => _annealing.Run(_bounds.Ideal, effort * _annealing.Loads, Level.Unfed);

    /// <summary>Improves where it is known what the relaxation proves: first so that nothing is dark that need not be.</summary>
    public void Approach()
    {
        for (var effort = ShortEffort; effort <= 2 * ShortEffort && Best.Levels[0] > _bounds.Ideal[0]; effort *= 2)
            FeedAll(effort);
        Begin();
    }

    /// <summary>Improves, longer each time.</summary>
    /// <param name="enough">Stops it.</param>
    public void Improve(CancellationToken enough)
    {
        _enough = enough;
        var begin = _left();
        if (IsLarge)
        {
            for (var attempt = 0; attempt < LargeAttempts && !Attempt(_effort, _warmth); attempt++)
                _effort = Math.Min(2 * _effort, LargeEffort);
            return;
        }

        var effort = ShortEffort;
        for (var spent = 0; spent < _effort && !Attempt(effort); effort = effort * 4 / 3)
        {
            spent += effort;
            _annealing.Restart();
            if (_annealing.Dark > _bounds.Ideal[0])
                FeedAll(FirstEffort);
        }

        _effort = Math.Min(2 * _effort, MostEffort);

        bool Attempt(int effort, double? warmth = null)
        {
            _report();
            return _annealing.Run(_bounds.Ideal, effort * _annealing.Loads, warmth: warmth) || _enough.IsCancellationRequested
                || begin - _left() > begin * ShareOfTime;
        }
    }

    /// <summary>Goes on from a wiring that was repaired from a coarse solution, if it is better than the best.</summary>
    public void Take(FoundWiring sketched)
    {
        if (_annealing.Take(sketched))
            _warmth = Lukewarm;
    }
}
