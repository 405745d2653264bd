using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>Outlets that count against the same totals.</summary>
/// <param name="Totals">The totals; none for outlets that no total binds.</param>
internal readonly record struct Cell(ValueList<TotalLimit> Totals)
{
    /// <summary>How many totals there are.</summary>
    public int Length => Totals.Count;
}
