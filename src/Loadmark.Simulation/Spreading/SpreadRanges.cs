using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Spreading;

/// <summary>What each figure of a circuit may be, and the setting of a circuit to one sample of them or to a corner.</summary>
/// <remarks>See docs/theory/spread.md. All ranges are independent; the stretches of one lead go together.</remarks>
internal sealed class SpreadRanges
{
    private readonly SpreadWidths _widths;
    private readonly AssumptionList _assumptions = new();
    private readonly List<string> _openUpwards = [];
    private readonly ImmutableArray<LoadRange> _loads;
    private readonly ImmutableArray<FigureRange> _volts;
    private readonly ImmutableArray<FigureRange> _wires;
    private readonly ImmutableArray<int> _leadOfPart;
    private readonly int _leads;

    /// <summary>Finds the ranges.</summary>
    public SpreadRanges(RigCircuit circuit, SpreadWidths widths)
    {
        _widths = widths;
        _loads = [.. circuit.Loads.Select(LoadOf)];
        _volts = [.. circuit.Outlets.Select(VoltsOf)];
        _wires = [.. circuit.Leads.Select(WireOf)];
        var feeds = circuit.Leads.Select(static part => part.Feed).Distinct().ToList();
        _leadOfPart = [.. circuit.Leads.Select(part => feeds.IndexOf(part.Feed))];
        _leads = feeds.Count;
    }

    /// <summary>The loads whose class of draw has no high end, in the order of the rig.</summary>
    public IReadOnlyList<string> OpenUpwards => _openUpwards;

    /// <summary>What was assumed for want of better figures.</summary>
    public ImmutableArray<Assumption> Assumptions => _assumptions.ToArray();

    /// <summary>Sets a circuit to a sample.</summary>
    /// <param name="circuit">The circuit or a copy of it.</param>
    /// <param name="seed">The seed of all samples.</param>
    /// <param name="sample">The number of the sample.</param>
    public void Set(RigCircuit circuit, ulong seed, int sample)
    {
        var random = SampleRandom.Of(seed, sample);
        for (var load = 0; load < _loads.Length; load++)
            Set(circuit, load, random.NextShare(), random.NextShare());
        for (var outlet = 0; outlet < _volts.Length; outlet++)
            circuit.SetVolts(outlet, _volts[outlet].At(random.NextShare()));

        Span<double> shares = _leads <= 256 ? stackalloc double[_leads] : new double[_leads];
        for (var lead = 0; lead < _leads; lead++)
            shares[lead] = random.NextShare();
        for (var part = 0; part < _wires.Length; part++)
            circuit.SetWire(part, _wires[part].At(shares[_leadOfPart[part]]));
    }

    /// <summary>Sets a circuit to a corner.</summary>
    /// <param name="circuit">The circuit or a copy of it.</param>
    /// <param name="isHeavy">Whether every draw is at its highest, every outlet at its lowest voltage and every lead at its longest; else
    /// all the other way round.</param>
    public void SetCorner(RigCircuit circuit, bool isHeavy)
    {
        var (high, low) = isHeavy ? (1.0, 0.0) : (0.0, 1.0);
        for (var load = 0; load < _loads.Length; load++)
            Set(circuit, load, high, high);
        for (var outlet = 0; outlet < _volts.Length; outlet++)
            circuit.SetVolts(outlet, _volts[outlet].At(low));
        for (var part = 0; part < _wires.Length; part++)
            circuit.SetWire(part, _wires[part].At(high));
    }

    private void Set(RigCircuit circuit, int load, double run, double start)
    {
        if (circuit.Loads[load].Device is null)
            return;
        var range = _loads[load];
        var amps = range.Run.At(run);
        circuit.SetRun(load, amps);
        circuit.SetStart(load, range.StartPerRun is { } ratio ? amps * ratio : Math.Max(amps, range.Start.At(start)));
    }

    /// <summary>
    /// A draw known as a range is that range; a measured one has its meter's accuracy; a printed one is the most it draws.
    /// </summary>
    private LoadRange LoadOf(LoadBranch branch)
    {
        if (branch.Device is null)
            return default;
        var rating = branch.Load.Rating;
        var run = RunOf(branch, rating);
        return rating.StartIsGiven && branch.StartAmps > branch.RunAmps
            ? new LoadRange(
                run, FigureRange.Around(branch.StartAmps, Take(_widths.MeasuredShare, CircuitDefaults.MeasuredDrawShare, branch.Id)), null)
            : new LoadRange(run, default, branch.RunAmps > 0 ? branch.StartAmps / branch.RunAmps : 1);
    }

    private FigureRange RunOf(LoadBranch branch, LoadRating rating)
    {
        if (rating.Running is { Origin: Origin.Measured })
            return FigureRange.Around(branch.RunAmps, Take(_widths.MeasuredShare, CircuitDefaults.MeasuredDrawShare, branch.Id));
        if (rating.StandIn is { } known)
        {
            // A class without a high end is computed as its low end, and that is what stands in.
            var range = new FigureRange((double)known.Low.Value, (double)(known.High ?? known.Low).Value);
            if (known.High is null)
                _openUpwards.Add(branch.Id);
            _assumptions.Add("draw of its class", known.ToString(), branch.Id, "common practice, no source");
            return range;
        }

        if (rating.DrawIsUnclear)
        {
            var ways = rating.Load.Label!.AmbiguousAmps.Candidates;
            return new FigureRange((double)ways.Min().Value, (double)ways.Max().Value);
        }

        return new FigureRange(branch.RunAmps * Take(_widths.RatedLeast, CircuitDefaults.RatedDrawLeast, branch.Id), branch.RunAmps);
    }

    private FigureRange VoltsOf(OutletBranch outlet)
    {
        var isUnregulated = outlet.Outlet.Supply.Regulated is false || outlet.Outlet.Rating.Form.Value == SupplyForm.Alternating;
        return FigureRange.Around(
            outlet.Volts,
            isUnregulated
                ? Take(_widths.UnregulatedShare, CircuitDefaults.UnregulatedTolerance, outlet.Name)
                : Take(_widths.OutletShare, CircuitDefaults.OutletTolerance, outlet.Name));
    }

    /// <summary>The length of a stretch as a multiple of the rig's; 1 where the rig gives ohms or there is no wire.</summary>
    private FigureRange WireOf(LeadPart part)
    {
        if (part.Metres is not > 0)
            return FigureRange.Single(1);
        var (lead, name) = (part.Feed.Lead, part.Feed.Lead?.Id ?? $"lead of {part.Feed.OutletNames}");
        var isGiven = lead?.Type == LeadType.DaisyChain
            ? (part.Name.EndsWith("tail", StringComparison.Ordinal) ? lead.Tail : lead.Pitch) is not null
            : lead?.Length is not null;
        if (isGiven)
            return FigureRange.Around(1, Take(_widths.LengthShare, CircuitDefaults.LengthTolerance, name));
        var ratio = Take(_widths.AssumedLengthRatio, CircuitDefaults.AssumedLengthRatio, name);
        return new FigureRange(1 / ratio, ratio);
    }

    /// <summary>A width; where it is the common one, that is said.</summary>
    private double Take(double width, CircuitDefault<double> common, string subject) =>
        width == common.Value ? _assumptions.Take(common, subject) : width;

    /// <summary>What a load may draw; its starting draw as a multiple of the running one where none is given.</summary>
    private readonly record struct LoadRange(FigureRange Run, FigureRange Start, double? StartPerRun);
}
