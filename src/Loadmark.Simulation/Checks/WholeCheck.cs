using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Checks;

/// <summary>
/// The whole check of a rig with one feed changed: every rule, and the first seconds of every part of the circuit that the change concerns.
/// What nothing joins to the feed is the same circuit as before.
/// </summary>
internal sealed class WholeCheck
{
    private readonly CircuitCase _before;
    private readonly HashSet<string> _concerned = new(StringComparer.Ordinal);

    /// <summary>What may be computed; once it is spent nothing passes.</summary>
    public WorkBudget Budget => _before.Budget;

    /// <summary>Prepares to try changes to a feed.</summary>
    /// <param name="before">The rig as it is.</param>
    /// <param name="feed">The feed.</param>
    public WholeCheck(CircuitCase before, WiredFeed feed)
    {
        _before = before;
        foreach (var outlet in feed.Outlets)
        {
            Concern(outlet, _concerned);
            foreach (var other in outlet.Feeds)
            {
                foreach (var load in other.Loads)
                    _concerned.Add(load.Id);
            }
        }
    }

    /// <summary>
    /// Whether the nameplates alone stand against the feed already, so that no other lead makes it pass: a lead changes nothing of that.
    /// </summary>
    public bool IsRefusedWhateverTheLead =>
        _before.Said.Findings.Items.Any(finding => finding.Severity >= Severity.Fails && Concerns(finding, _concerned));

    /// <summary>
    /// Whether a changed rig passes: no finding of fails or harm is about the loads, outlets and supplies of the feed, nor about the outlet
    /// that a load is moved to, and nowhere is there one that was not there before.
    /// </summary>
    /// <param name="changed">The rig with the change.</param>
    /// <param name="moved">The outlet that a load is moved to; null where none is.</param>
    /// <param name="cancellation">Stops it.</param>
    public bool Passes(Rig changed, WiredOutlet? moved, CancellationToken cancellation)
    {
        if (Budget.IsSpent)
            return false;
        var concerned = _concerned;
        if (moved is not null)
            Concern(moved, concerned = new HashSet<string>(_concerned, StringComparer.Ordinal));
        foreach (var finding in Check(changed, concerned, cancellation))
        {
            if (finding.Severity < Severity.Fails)
                continue;

            // A part of the circuit that is not concerned is as it was, and its first seconds were not computed again.
            if (Concerns(finding, concerned)
                || (!IsOfCircuit(finding)
                    && !_before.Said.Findings.Items.Any(known => known.Rule == finding.Rule && known.Subjects == finding.Subjects)))
                return false;
        }

        return true;
    }

    private ValueList<Finding> Check(Rig changed, HashSet<string> concerned, CancellationToken cancellation)
    {
        var wired = WiredRig.Of(changed);
        var said = NameplateCheck.Of(wired);
        var circuit = RigCircuit.Of(wired);
        var settlement = new Settlement(circuit);
        settlement.Solve(cancellation);
        var settled = SettleReport.Of(settlement);
        var parts = Enumerable.Range(0, circuit.Parts.Length)
            .Where(part => circuit.Parts[part].Outlets.Any(outlet => concerned.Contains(circuit.Outlets[outlet].Name)))
            .ToList();
        var tried = new CircuitCase(circuit, settled, StartUpSummary.Of(circuit, parts, cancellation), said) { SeeksRemedies = false };
        var findings = CircuitJudge.Judge(tried, cancellation).Findings;
        Budget.SpendLayout(circuit);
        Budget.Spend(WorkBudget.WorkOf(circuit));
        return findings;
    }

    private static bool IsOfCircuit(Finding finding) => finding.Rule == RuleId.Sags || finding.Rule == RuleId.DoesNotStart;

    private static bool Concerns(Finding finding, HashSet<string> concerned) => finding.Subjects.Items.Any(concerned.Contains);

    private static void Concern(WiredOutlet outlet, HashSet<string> concerned)
    {
        concerned.Add(outlet.Name);
        concerned.Add(outlet.Rating.Supply.Id);
    }
}
