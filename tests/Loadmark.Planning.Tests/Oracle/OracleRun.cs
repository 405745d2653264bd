using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Files;
using Loadmark.Planning.Search;

namespace Loadmark.Planning.Tests.Oracle;

/// <summary>A plan of a small random rig held against the best of all its wirings, which are tried one by one and judged by the rules alone.</summary>
internal sealed record OracleRun
{
    /// <summary>How many loads the rig has.</summary>
    public required int Loads { get; init; }

    /// <summary>How many outlets it has.</summary>
    public required int Outlets { get; init; }

    /// <summary>How many wirings the rules were asked about.</summary>
    public required int Tried { get; init; }

    /// <summary>The plan.</summary>
    public required PlanResult Plan { get; init; }

    /// <summary>What of its labels makes it hard, each once.</summary>
    public required IReadOnlyList<string> Traits { get; init; }

    /// <summary>How its feeds are joined and what leads they take.</summary>
    public required IReadOnlyList<string> Feeds { get; init; }

    /// <summary>What is wrong with the plan, with the rig; null where nothing is.</summary>
    public required string? Fault { get; init; }

    /// <summary>How many supplies that are fed by others the plan feeds.</summary>
    public int Hubs => Plan.Rig.Wired!.Value.Items.SelectMany(static feed => feed.To.Items).Count(static id => id.StartsWith("hub", StringComparison.Ordinal));

    /// <summary>Whether what the plan says of each level is proven.</summary>
    public bool IsProven => Plan.Objective.Items.All(static level => level.IsProven);

    /// <summary>Whether every load is fed.</summary>
    public bool IsWhole => Plan.Unfed.Count == 0;

    /// <summary>Plans a random rig; of every fourth a feed is pinned, of every sixth not all supplies may be used.</summary>
    /// <param name="seed">The same seed and sizes make the same rig.</param>
    /// <param name="mostLoads">How many loads at the most.</param>
    /// <param name="mostOutlets">How many outlets at the most.</param>
    /// <param name="cancellation">Stops the planner.</param>
    /// <param name="hubs">How many supplies that are fed by others come on top.</param>
    public static OracleRun Of(int seed, int mostLoads, int mostOutlets, CancellationToken cancellation, int hubs = 0)
    {
        var text = new RandomRig(seed, mostLoads, mostOutlets, hubs).Write();
        var reading = RigFileReader.Read(text, "oracle");
        var rig = reading.Rig ?? throw new InvalidOperationException(string.Join('\n', reading.Errors) + "\n" + text);
        if (seed % 4 == 0 && new BruteForce(rig).AnyFeed(seed * 7) is { } feed)
            rig = rig with { Wired = [feed with { Pinned = true }] };
        HashSet<string>? only = seed % 6 == 0 ? ["S1", "S3", "hub-1"] : null;
        var best = new BruteForce(rig, only).Run();
        var options = new PlanOptions { Only = only };
        var plan = RigPlanner.Plan(rig, options, cancellation);
        var canFeedAll = RigPlanner.CanFeedAll(rig, options, cancellation);
        var wired = WiredRig.Of(rig);
        return new OracleRun
        {
            Loads = rig.Loads.Count,
            Outlets = wired.Outlets.Count,
            Tried = best.Tried,
            Plan = plan,
            Traits = [.. TraitsOf(wired).Distinct()],
            Feeds = [.. plan.Rig.Wired!.Value.Items.SelectMany(one => new[] { $"{one.Joined}", rig.Leads.Items.FirstOrDefault(lead => lead.Id == one.Lead)?.Type.ToString() ?? "plain" })],
            Fault = FaultOf(plan, best, canFeedAll, mayBeOpen: hubs > 0) is { } fault ? $"seed {seed}, up to {mostLoads} loads and {mostOutlets} outlets: {fault}\n{text}" : null,
        };
    }

    private static string? FaultOf(PlanResult plan, BruteForce best, bool? canFeedAll, bool mayBeOpen)
    {
        if (mayBeOpen && !plan.Objective.Items.All(static level => level.IsProven))
            return OpenFaultOf(plan, best, canFeedAll);
        var measured = plan.Objective.Items.Select(static level => Math.Round(level.Value, 5)).ToArray();
        if (!measured.SequenceEqual(best.Best!) || !Levels.Of(plan.Rig).SequenceEqual(best.Best!))
            return $"plan:   {string.Join(' ', measured)}\n{string.Join('\n', plan.Rig.Wired!.Value)}\noracle: {string.Join(' ', best.Best!)}\n{string.Join('\n', best.BestRig!.Wired!.Value)}";
        if (plan.Objective.Items.FirstOrDefault(static level => !level.IsProven) is { } open)
            return $"not proven: {open}";
        if (plan.Status != (plan.Unfed.Count == 0 ? PlanStatus.Optimal : PlanStatus.Infeasible))
            return $"{plan.Status}, {plan.Unfed.Count} not fed";
        if (canFeedAll != (plan.Unfed.Count == 0))
            return $"whether all can be fed: {canFeedAll?.ToString() ?? "not known"}";
        if (plan.Check.Findings.Items.FirstOrDefault(BruteForce.Refuses) is { } refused)
            return $"refused: {refused}";
        return null;
    }

    /// <summary>A plan that does not claim to be the best must be one that the rules allow, with bounds that hold; and no answer may be wrong.</summary>
    private static string? OpenFaultOf(PlanResult plan, BruteForce best, bool? canFeedAll)
    {
        if (plan.Check.Findings.Items.FirstOrDefault(BruteForce.Refuses) is { } refused)
            return $"refused: {refused}";
        if (plan.Status is PlanStatus.Optimal || (plan.Status == PlanStatus.Infeasible && best.Best![0] == 0))
            return $"{plan.Status} is not so: {string.Join(' ', best.Best!)}";
        if (canFeedAll is { } can && can != (best.Best![0] == 0))
            return $"whether all can be fed: {can}, and the best leaves {best.Best[0]} dark";
        for (var level = 0; level < best.Best!.Length; level++)
        {
            if (plan.Objective[level].Bound > best.Best[level])
                return $"{plan.Objective[level]}, and the best has {best.Best[level]}";
            if (!plan.Objective[level].IsProven)
                break;
        }

        return null;
    }

    private static IEnumerable<string> TraitsOf(WiredRig rig)
    {
        foreach (var rating in rig.Loads.Items.Select(static load => load.Rating))
        {
            if (rating.TakesEitherForm)
                yield return "a load for a.c. or d.c.";
            else if (!rating.Form.IsKnown)
                yield return "a load for a.c. or d.c., not known which";
            else if (rating.Form.Value == SupplyForm.Alternating)
                yield return "a load for a.c.";
            if (!rating.Polarity.IsKnown)
                yield return "a load of unknown polarity";
            if (!rating.Voltage.IsKnown)
                yield return "a load of unknown voltage";
            if (!rating.Ground.IsKnown)
                yield return "a load of unknown ground";
            if (rating.Running is null)
                yield return "a load of unknown draw";
            if (rating.DrawVaries)
                yield return "a load whose draw follows the voltage";
        }

        foreach (var outlet in rig.Outlets)
        {
            if (!outlet.Rating.Form.IsKnown)
                yield return "an outlet of unknown kind of current";
            if (!outlet.Rating.Polarity.IsKnown)
                yield return "an outlet of unknown polarity";
            if (outlet.Rating.Modes.Any(static mode => mode.Volts is null))
                yield return "an outlet of unknown voltage";
            if (outlet.Supply.Regulated is false)
                yield return "an unregulated supply";
            if (outlet.Supply.MayBeUnregulated)
                yield return "a supply that may be unregulated";
        }

        foreach (var supply in rig.Rig.Supplies)
        {
            if (supply.Label is { Outlets.IsEmpty: false } or { EachOutlet: true })
                yield return "a supply whose label tells of several outlets";
            if (supply.Label is { PrintsVoltAmps: true } || supply.Outlets.Items.Any(static outlet => outlet.Label.PrintsVoltAmps))
                yield return "a supply with a figure in VA";
        }

        if (rig.Loads.Items.Any(static load => load.Rating.Load.Label is { PrintsVoltAmps: true }))
            yield return "a load with a figure in VA";
        if (NameplateCheck.Of(rig).Findings.Items.Any(static finding => finding.Rule == RuleId.MainsMismatch && finding.Severity > Severity.Note))
            yield return "a supply that may not be for the mains";
    }
}
