using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Checks;

/// <summary>What a rule goes by: the circuit, what became of it, and what the other rules have said already.</summary>
/// <param name="Circuit">The rig's circuit.</param>
/// <param name="Settled">The rig's steady state.</param>
/// <param name="Started">The rig's first seconds; null where they were not computed.</param>
/// <param name="Said">What the rules on nameplates have found.</param>
internal sealed record CircuitCase(RigCircuit Circuit, SettleResult Settled, StartUpSummary? Started, CheckResult Said)
{
    /// <summary>Whether what would mend a finding is sought and tried; not while such a change is itself being tried.</summary>
    public bool SeeksRemedies { get; init; } = true;

    /// <summary>What may still be computed to seek remedies.</summary>
    public WorkBudget Budget { get; } = WorkBudget.ForRemedies(Circuit);

    private HashSet<string>? _said;

    private static readonly RuleId[] Overloads = [RuleId.OutletOverload, RuleId.BankOverload, RuleId.SupplyOverload];

    /// <summary>The feeds with the places of some of their loads, those that are computed on them and hold.</summary>
    public IEnumerable<(WiredFeed Feed, List<int> Loads)> Feeds(Func<int, bool> holds)
    {
        var loads = new List<int>?[Circuit.Rig.Feeds.Count];
        for (var load = 0; load < Circuit.Loads.Length; load++)
        {
            if (Circuit.Loads[load] is { Feed: { } feed, Device: not null } && holds(load))
                (loads[feed.Index] ??= []).Add(load);
        }

        foreach (var feed in Circuit.Rig.Feeds)
        {
            if (loads[feed.Index] is { } held)
                yield return (feed, held);
        }
    }

    /// <summary>Whether the nameplates alone say that a load gets too little to run: then the circuit says nothing new.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public bool IsUnderVoltage(int load) => IsSaid(RuleId.UnderVoltage, Circuit.Loads[load].Id);

    /// <summary>Whether the nameplates say that a load gets a voltage which is low, though it runs.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public bool IsVoltageLow(int load) => IsSaid(RuleId.VoltageLow, Circuit.Loads[load].Id);

    /// <summary>
    /// Whether the running draws alone are said to be too much for an outlet of a feed. What comes of that, low voltage or loads
    /// that do not start, is the same thing again.
    /// </summary>
    public bool IsOverloaded(WiredFeed feed) =>
        Overloads.Any(
            rule => feed.Outlets.Any(
                outlet => IsSaid(rule, outlet.Name) || (rule != Overloads[0] && IsSaid(rule, outlet.Rating.Supply.Id))));

    private bool IsSaid(RuleId rule, string subject) => (_said ??= Sayings()).Contains($"{rule.Name} {subject}");

    /// <summary>What the rules on nameplates have said: rule and subject, apart from overloads that are less than a failure.</summary>
    private HashSet<string> Sayings()
    {
        var said = new HashSet<string>(StringComparer.Ordinal);
        foreach (var finding in Said.Findings)
        {
            if (finding.Rule == RuleId.OutletOverload && finding.Severity < Severity.Fails)
                continue;
            foreach (var subject in finding.Subjects)
                said.Add($"{finding.Rule.Name} {subject}");
        }

        return said;
    }
}
