using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>
/// Merges groups of loads that suit the same outlets equally well and differ only in what they draw. With the least of the
/// merged draws the problem is an easier one: what cannot be done in it cannot be done at all, and its best is not worse
/// than the true one.
/// </summary>
internal sealed class LoadMerger
{
    private readonly PlanProblem _problem;
    private readonly string[] _profiles;

    /// <summary>Looks at a problem in which every draw is told apart.</summary>
    public LoadMerger(PlanProblem problem)
    {
        _problem = problem;
        _profiles = [.. problem.Loads.Select(ProfileOf)];
    }

    /// <summary>The problem with loads merged.</summary>
    public PlanProblem Merge(Granularity granularity)
    {
        var merged = new List<List<LoadGroup>>();
        foreach (var alike in _problem.Loads.GroupBy(load => (_profiles[load.Index], granularity.ByPriority ? load.Priority : 0)))
        {
            List<LoadGroup>? last = null;
            foreach (var load in alike.OrderBy(Run).ThenBy(Start).ThenBy(static load => load.Index))
            {
                if (last is null || Run(load) > Run(last[0]) * granularity.Ratio || Start(load) > last.Min(Start) * granularity.Ratio
                    || last.Max(Start) > Start(load) * granularity.Ratio)
                    merged.Add(last = []);
                last.Add(load);
            }
        }

        ImmutableArray<LoadGroup> loads = [.. merged.OrderBy(static parts => parts.Min(static part => part.Index))
            .Select(static (parts, index) => LoadGroup.Merge(index, parts))];
        return _problem with { Loads = loads };
    }

    private static decimal Run(LoadGroup load) => load.Rating.Running?.Value.Value ?? 0;

    private static decimal Start(LoadGroup load) => load.Rating.Starting?.Value.Value ?? 0;

    /// <summary>All that a plan looks at but draws and priority: where the load suits, and what company it keeps.</summary>
    private string ProfileOf(LoadGroup load)
    {
        var text = new StringBuilder();

        // A supply's input must come from elsewhere than the supply, so that it is like no other's.
        text.Append(load.IsInput ? load.Rating.Load.Id : "").Append('\n');
        text.Append(
            CultureInfo.InvariantCulture,
            $"{load.IsInSignal} {load.Rating.IsDigital == true} {load.Rating.Load.Isolate} {load.Rating.Ground.Value} "
            + $"{load.Rating.Ground.Origin} {load.IsDrawKnown} {load.Rating.DrawVaries} ");
        if (_problem.Outlets.Any(static group => group.Rating.Outlet.Surge?.Duration is not null))
            text.Append(CultureInfo.InvariantCulture, $"{load.Rating.StartDuration?.Value} ");
        text.Append(load.Board).Append('\n').Append(load.IsWired ? 'w' : 'n');
        SingleLead?[] leads = [null, .. _problem.SingleLeads];
        foreach (var lead in leads.Where(_ => load.IsWired))
        {
            foreach (var source in _problem.Singles)
                text.Append(load.IsMovedBy(Joint.None, [source.Part], lead?.Ids) ? 'm' : 'h');
        }

        LeadEnds[] ends = [LeadEnds.Plain, .. _problem.SingleLeads.Select(static lead => lead.Ends)];
        foreach (var end in ends)
        {
            foreach (var source in _problem.Singles)
                text.Append(Sign(source.CostOf(load, end))).Append(source.IsThin(load) ? '!' : '.');
        }

        foreach (var kind in _problem.Slots.DistinctBy(static slot => slot.Kind))
        {
            foreach (var from in kind.Classes)
            {
                text.Append(Sign(from.CostOf(load, kind.Ends)));
                if (load.IsWired)
                    text.Append(load.IsMovedBy(from.Joined, from.FirstParts, _problem.SlotLeads[kind.Kind]) ? 'm' : 'h');
                foreach (var leg in from.Legs)
                {
                    foreach (var limit in leg.Limits)
                        text.Append(
                            limit is null ? '?' : !limit.Bears(load, from.Volts) ? '-' : limit.IsThin(load, from.Volts) ? '!' : '.');
                }
            }
        }

        return text.ToString();
    }

    private static char Sign(LoadCost? cost) => cost is { } some ? (char)((some.Doubts > 0 ? 'a' : '0') + some.Margins) : '-';
}
