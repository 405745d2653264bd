using Google.OrTools.Sat;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>How many loads of a group are fed alone from a source.</summary>
/// <param name="Source">The outlet and its setting.</param>
/// <param name="Load">The loads.</param>
/// <param name="Lead">The kind of lead; null for a plain one.</param>
/// <param name="Cost">What it counts that each is fed so.</param>
/// <param name="Count">How many.</param>
/// <param name="Most">How many at the most.</param>
internal sealed record SingleChoice(Source Source, LoadGroup Load, SingleLead? Lead, LoadCost Cost, IntVar Count, long Most)
{
    /// <summary>How many loads the source feeds, as what they are on its return.</summary>
    public LoadCount OnReturn => new(Load, Count, Most, Load.OccupantAt(Source.Point, Lead?.Ends.Reverses ?? false));
}
