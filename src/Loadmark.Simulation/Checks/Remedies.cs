using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Checks;

/// <summary>Writes what would mend something.</summary>
internal static class Remedies
{
    /// <summary>What is said where the rig is too large to try everything.</summary>
    public const string NotSought =
        "What would mend it was not sought to the end, as the rig is large: put fewer loads on one lead, or check its boards one by one.";

    /// <summary>Any one of the ways that were found, each of which was tried; else what to do without.</summary>
    public static string Text(IEnumerable<string?> ways, WorkBudget budget, string otherwise)
    {
        var found = ways.OfType<string>().ToList();
        return found switch
        {
            [] => budget.IsSpent ? NotSought : otherwise,
            [var only] => $"This mends it (tried): {only}.",
            _ => $"Any one of these mends it (tried): {string.Join("; ", found)}.",
        };
    }
}
