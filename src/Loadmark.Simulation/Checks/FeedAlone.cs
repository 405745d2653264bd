using Loadmark.Core.Ratings;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Checks;

/// <summary>
/// The circuit of one feed, with those that share an outlet with it: on it a change is tried by solving again. Other feeds have
/// nothing to do with it.
/// </summary>
internal sealed class FeedAlone
{
    /// <summary>How long is watched after the slowest start, s: a load that starts over and over has shown it by then.</summary>
    private const decimal SecondsAfterStarts = 1;

    private readonly RigCircuit _circuit;
    private readonly StartUpOptions? _starts;
    private readonly WorkBudget _budget;

    /// <summary>Takes a feed out of a rig.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="feed">The feed.</param>
    /// <param name="starts">Whether its loads must come up after switch-on; else it is enough that they settle.</param>
    /// <param name="budget">What may be computed; once it is spent nothing is found to run.</param>
    public FeedAlone(WiredRig rig, WiredFeed feed, bool starts, WorkBudget budget)
    {
        _budget = budget;
        var kept = rig.Feeds.Items.Where(other => other.Outlets.Any(outlet => feed.Outlets.Any(own => own.Name == outlet.Name)));
        _circuit = RigCircuit.Of(WiredRig.Of(rig.Rig with { Wired = [.. kept.Select(static other => other.Feed)] }));
        budget.SpendLayout(_circuit);
        if (!starts)
            return;

        // A heater warms for as long as it takes; nothing else needs the full time.
        var slowest = _circuit.Loads.Max(static load => load.StartSeconds);
        var hasHeater = _circuit.Loads.Any(static load => load.IsHeater);
        _starts = new StartUpOptions { Duration = hasHeater ? null : new Seconds((decimal)slowest + SecondsAfterStarts) };
    }

    /// <summary>The feed's circuit, to be changed and put back.</summary>
    public RigCircuit Circuit => _circuit;

    /// <summary>Whether all loads of the feed run as the circuit is now, and came up at the first go.</summary>
    public bool AllRun(CancellationToken cancellation)
    {
        if (_budget.IsSpent)
            return false;
        var before = WorkBudget.WorkOf(_circuit);
        try
        {
            return AllRunNow(cancellation);
        }
        finally
        {
            _budget.Spend(WorkBudget.WorkOf(_circuit) - before);
        }
    }

    private bool AllRunNow(CancellationToken cancellation)
    {
        var settlement = new Settlement(_circuit);
        if (!settlement.Solve(cancellation) || !Wired().All(load => settlement.LoadState(load) == LoadState.Runs))
            return false;
        if (_starts is null)
            return true;
        var run = new StartUpRun(_circuit, _starts);
        return run.Run(cancellation) && Wired().All(load => run.LoadState(load) == LoadState.Runs && run.LoadRestarts(load) == 0);
    }

    private IEnumerable<int> Wired() => Enumerable.Range(0, _circuit.Loads.Length).Where(load => _circuit.Loads[load].Device is not null);

    /// <summary>The stretches of wire of one of its feeds, by their place in the circuit.</summary>
    /// <param name="feed">The feed, of the rig that it was taken from.</param>
    public IEnumerable<int> WiresOf(WiredFeed feed) =>
        Enumerable.Range(0, _circuit.Leads.Length)
            .Where(part => IsWire(_circuit.Leads[part]) && _circuit.Leads[part].Feed.Feed == feed.Feed);

    private static bool IsWire(LeadPart part) => part is { Metres: > 0, SquareMetres: not null };
}
