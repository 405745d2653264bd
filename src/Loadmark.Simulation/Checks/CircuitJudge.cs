using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;

namespace Loadmark.Simulation.Checks;

/// <summary>Asks the rules that judge a rig by its circuit.</summary>
internal static class CircuitJudge
{
    /// <summary>Adds to a check what the circuit says.</summary>
    /// <param name="subject">The circuit, what became of it, and what the rules on nameplates have found.</param>
    /// <param name="cancellation">Stops it.</param>
    public static CheckResult Judge(CircuitCase subject, CancellationToken cancellation)
    {
        var report = new Report();
        foreach (var rule in CircuitRules.All)
            rule.Judge(subject, report, cancellation);
        return subject.Said.With(report.Findings().Items, Untold(subject));
    }

    /// <summary>What the circuit could not tell and the rules on nameplates have not said themselves.</summary>
    private static List<Untold> Untold(CircuitCase subject)
    {
        var untold = new List<Untold>();
        if (!subject.Settled.IsFound)
            untold.Add(
                new Untold(
                    RuleId.Sags,
                    Subjects(subject),
                    "No steady state was found for part of the circuit, which does not prove that there is none."));
        if (subject.Started is { StoppedAt: { } reached })
            untold.Add(new Untold(RuleId.DoesNotStart, Subjects(subject), $"The first seconds could be computed up to {reached} only."));
        return untold;
    }

    private static ValueList<string> Subjects(CircuitCase subject) =>
        [.. Enumerable.Range(0, subject.Circuit.Loads.Length)
            .Where(load => subject.Settled.Loads[load].Volts is null && subject.Circuit.Loads[load].Device is not null)
            .Select(load => subject.Circuit.Loads[load].Id)
            .DefaultIfEmpty(subject.Circuit.Loads.Length > 0 ? subject.Circuit.Loads[0].Id : subject.Settled.Rig)];
}
