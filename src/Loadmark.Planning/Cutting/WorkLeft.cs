namespace Loadmark.Planning.Cutting;

/// <summary>How much of the work that the solver may do is left, in its own units; one search takes what the one before has left.</summary>
/// <param name="limit">All of it.</param>
/// <param name="cancellation">Ends it at once.</param>
internal sealed class WorkLeft(double limit, CancellationToken cancellation)
{
    private double _left = limit;

    /// <summary>Whether nothing is left.</summary>
    public bool IsOver => _left <= 0 || cancellation.IsCancellationRequested;

    /// <summary>Ends it at once.</summary>
    public CancellationToken Cancellation => cancellation;

    /// <summary>The solver's parameter that holds it to what is left.</summary>
    public string Parameter => FormattableString.Invariant($"max_deterministic_time:{_left:0.######}");

    /// <summary>Takes off what a search took.</summary>
    public void Spend(double work) => _left -= work;
}
