namespace Loadmark.Planning.Objective;

/// <summary>One level of the objective: what was reached, and what is proven that no wiring can beat.</summary>
/// <param name="Name">What is counted, such as "loads not fed".</param>
/// <param name="Value">What the plan has; smaller is better.</param>
/// <param name="Bound">What no wiring can fall below, given the levels before; equal to the value when proven.</param>
public sealed record ObjectiveLevel(string Name, decimal Value, decimal Bound)
{
    /// <summary>Whether the level is proven best.</summary>
    public bool IsProven => Value == Bound;
}
