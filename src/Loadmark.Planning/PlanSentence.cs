namespace Loadmark.Planning;

/// <summary>What a plan comes to, in one sentence: how much is fed, and whether more or better is possible.</summary>
public static class PlanSentence
{
    /// <summary>The sentence. It says that something is proven only where the planner has proven it.</summary>
    /// <param name="plan">The plan.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    public static string Of(PlanResult plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var all = plan.Rig.EveryLoad.Count(); // with the supplies that are fed by others
        var fed = all - plan.Unfed.Count;
        var every = all switch { 1 => "The load is fed", 2 => "Both loads are fed", _ => $"All {all} loads are fed" };
        var few = (fed, all) switch { (0, 1) => "The load cannot", (0, _) => "No load can", _ => $"Only {fed} of {all} loads can" };
        return plan.Status switch
        {
            PlanStatus.Optimal => $"{every}, and there is no better way with this gear: that is proven.",
            PlanStatus.Feasible => $"{every}; whether there is a better way was not settled in the time.",
            PlanStatus.Infeasible => $"{few} be fed with this gear: that is proven.",
            _ => $"{fed} of {all} loads are fed; whether more can be was not settled in the time.",
        };
    }
}
