using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>A lead in use in a wiring that is being made.</summary>
/// <param name="Choice">The place of the choice among those of its slot.</param>
/// <param name="Places">For each leg the place of its outlet among the leg's.</param>
/// <param name="Crew">The place of the crew.</param>
/// <param name="Loads">The loads' groups, once for each load.</param>
internal sealed record SlotFill(int Choice, int[] Places, int Crew, List<LoadGroup> Loads);
