using System.Diagnostics;
using Google.OrTools.Sat;
using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Tests.Oracle.Naive;

/// <summary>
/// The planning problem a second time, as plainly as it can be written: one yes-or-no for every load on every way to feed
/// it, nothing grouped, no symmetry broken, one level after the other. It knows the ratings and the rules of Core and
/// nothing of the planner. Which wirings there are is what <c>BruteForce</c> tries.
/// </summary>
internal sealed class NaiveModel
{
    /// <summary>Billionths: draws are printed in milliamps and milliwatts, so no true difference is lost among what quotients round off.</summary>
    private const decimal Scale = 1_000_000_000m;

    /// <summary>What rounded quotients may add up to, in billionths; any true difference is far larger.</summary>
    private const long Rounding = 100;

    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private readonly CpModel _model = new();
    private readonly Rig _rig;
    private readonly WiredRig _wired;
    private readonly List<(NaiveFeed Feed, IntVar Used, List<NaiveChoice> Loads)> _feeds = [];
    private readonly NaiveSum[] _levels = [.. Enumerable.Range(0, 11).Select(_ => new NaiveSum())];
    private readonly List<IntVar> _variables = [];

    /// <summary>States the problem of a rig.</summary>
    public NaiveModel(Rig rig, IReadOnlySet<string>? only = null)
    {
        _rig = rig with { Wired = [.. (rig.Wired ?? []).Items.Where(feed => feed.Pinned)] };
        _wired = WiredRig.Of(_rig);
        foreach (var feed in new NaiveFeeds(_rig, _wired, only).All())
            Add(feed);
        FeedEachOnce();
        UseEachOnce(_wired.Outlets.Items, (feed, outlet) => feed.Outlets.Contains(outlet));
        UseEachOnce(_feeds.Where(one => one.Feed is { Lead: not null, Pinned: null }).Select(one => (one.Feed.Lead!.Id, one.Feed.Copy)).Distinct(),
            (feed, lead) => feed.Pinned is null && feed.Lead?.Id == lead.Id && feed.Copy == lead.Copy);
        foreach (var supply in _wired.Supplies)
            KeepTotals(supply);
        JoinReturns();
    }

    /// <summary>Minimises the levels one after the other.</summary>
    /// <param name="limit">How long, counted from when the model was begun.</param>
    /// <param name="workers">How many searches beside one another.</param>
    public NaiveAnswer Solve(TimeSpan limit, int workers = 1)
    {
        Rig? best = null;
        var bounds = new List<decimal>();
        foreach (var level in _levels)
        {
            var left = limit - _clock.Elapsed;
            if (left <= TimeSpan.Zero)
                break;
            _model.Minimize(level.Expression);
            using var solver = new CpSolver();
            solver.StringParameters = FormattableString.Invariant($"num_workers:{workers} random_seed:1 max_time_in_seconds:{left.TotalSeconds:0.###}");
            var status = solver.Solve(_model);
            if (status is CpSolverStatus.Infeasible or CpSolverStatus.ModelInvalid)
                throw new InvalidOperationException($"The naive model is {status}.");
            if (status == CpSolverStatus.Unknown)
                break;

            best = Decode(solver);
            var scale = level == _levels[^1] ? Scale : 1;
            bounds.Add(Math.Max(0, Math.Round((decimal)Math.Ceiling(solver.BestObjectiveBound - 1e-6) / scale, 5)));
            if (status != CpSolverStatus.Optimal)
                return new NaiveAnswer(best, bounds.Count - 1, bounds);
            _model.Add(level.Expression <= (long)Math.Round(solver.ObjectiveValue));
            _model.ClearHints();
            foreach (var variable in _variables)
                _model.AddHint(variable, solver.Value(variable));
        }

        return new NaiveAnswer(best, bounds.Count, bounds);
    }

    private static long Nano(decimal amount) => (long)Math.Round(amount * Scale);

    private IntVar Choice()
    {
        var choice = _model.NewIntVar(0, 1, "");
        _variables.Add(choice);
        return choice;
    }

    private void Add(NaiveFeed feed)
    {
        var plugs = feed.Lead is null ? 1 : feed.Lead.LoadPlugs ?? _wired.Loads.Count;
        var limits = feed.Limits().ToList();
        if (limits.Exists(limit => limit.Amps is null))
            plugs = 1;
        var loads = new List<NaiveChoice>();
        foreach (var load in _wired.Loads)
        {
            var isOffered = feed.Pinned is { } pinned ? pinned.To.Items.Contains(load.Id) : load.Feeds.Count == 0;
            if (!isOffered)
                continue;
            var fit = feed.FitOf(_rig, load.Rating);
            if (feed.Pinned is null && fit.Answer == Fit.No)
                continue;
            var choice = new NaiveChoice(load, LoadRating.Of(load.Rating.Load, feed.Volts), feed.OccupantOf(_rig, load.Rating), Choice());
            loads.Add(choice);
            _levels[3].Add(choice.On, fit.IsDoubtful ? 1 : 0);
            _levels[5].Add(choice.On, fit.Margins);
            if (feed.Pinned is not null)
                _model.Add(choice.On == 1);
        }

        if (loads.Count == 0)
            return;

        var used = Choice();
        _feeds.Add((feed, used, loads));
        var all = new NaiveSum();
        foreach (var load in loads)
        {
            _model.Add(load.On <= used);
            all.Add(load.On);
        }

        _model.Add(all.Expression >= used);
        _model.Add(all.Expression <= (feed.Pinned is null ? plugs : loads.Count));
        foreach (var alone in loads.Where(load => load.Rating.Running is null && feed.Pinned is null))
            _model.Add(all.Expression <= 1 + (loads.Count * (1 - alone.On)));
        foreach (var (amps, surge, seconds) in limits)
        {
            if (amps is { } known)
                Keep(loads, used, known, surge, seconds);
        }

        Count(feed, used, all);
    }

    private void Keep(List<NaiveChoice> loads, IntVar used, decimal limit, decimal? surge, decimal? surgeSeconds)
    {
        var run = Sum(loads, load => Nano(load.Run));
        var most = Nano(limit) + Rounding;
        var usable = Nano(limit * (1 - _rig.HeadroomInForce)) + Rounding;
        var thin = Choice();
        _levels[4].Add(thin);
        _model.Add(run.Expression <= (usable * used) + ((most - usable) * thin));
        _model.Add(thin <= used);
        _model.Add(Sum(loads, load => Nano(load.Start)).Expression <= Math.Max(most, Nano(surge ?? 0) + Rounding) * used);
        if (surge is null || surgeSeconds is not { } seconds)
            return;

        // When the surge ends, those that have started run, and those that take longer still start.
        var after = Sum(loads, load => Nano(load.Outlasts(seconds) ? load.Start : load.Run));
        var beyond = loads.Sum(load => Nano(load.Start)) + 1;
        foreach (var slow in loads.Where(load => load.Outlasts(seconds)))
            _model.Add(after.Expression <= most + (beyond * (1 - slow.On)));
    }

    private static NaiveSum Sum(List<NaiveChoice> loads, Func<NaiveChoice, long> weight)
    {
        var sum = new NaiveSum();
        foreach (var load in loads)
            sum.Add(load.On, weight(load));
        return sum;
    }

    /// <summary>Special leads, loads that share, capacity.</summary>
    private void Count(NaiveFeed feed, IntVar used, NaiveSum all)
    {
        var most = Math.Min(all.Count, feed.Lead is null ? 1 : feed.Lead.LoadPlugs ?? all.Count);
        var several = Choice();
        _model.Add(all.Expression <= 1 + (most * several));
        var sharing = _model.NewIntVar(0, most, "");
        _variables.Add(sharing);
        _model.Add(all.Expression <= sharing + most - (most * several));
        _levels[8].Add(feed.IsSpecial ? used : several);
        _levels[9].Add(sharing);
        foreach (var outlet in feed.Outlets)
            _levels[10].Add(used, Nano(outlet.Rating.Modes.Max(mode => (mode.Volts is { } volts ? mode.LimitAt(volts.Low) : mode.Limit)?.Value.Value ?? 0)));
    }

    private void FeedEachOnce()
    {
        var on = _feeds.SelectMany(one => one.Loads).ToLookup(choice => choice.Load);
        foreach (var load in _wired.Loads)
        {
            var dark = Choice();
            var places = new NaiveSum();
            places.Add(dark);
            foreach (var choice in on[load])
                places.Add(choice.On);
            _model.Add(places.Expression == 1);
            _levels[0].Add(dark);
            if (load.Rating.Load.Priority == 1)
                _levels[1].Add(dark);
            else if (load.Rating.Load.Priority is null or 2)
                _levels[2].Add(dark);
        }
    }

    private void UseEachOnce<T>(IEnumerable<T> things, Func<NaiveFeed, T, bool> uses)
    {
        foreach (var thing in things.ToList())
        {
            var sum = new NaiveSum();
            foreach (var (_, used, _) in _feeds.Where(one => uses(one.Feed, thing)))
                sum.Add(used);
            if (!sum.IsEmpty)
                _model.Add(sum.Expression <= 1);
        }
    }

    private void KeepTotals(SupplyRating supply)
    {
        foreach (var bank in supply.Supply.Banks)
            Keep(supply.Supply.Id, bank.Name, bank.Total);
        if (supply.Total is { } total)
            Keep(supply.Supply.Id, null, total);
    }

    private void Keep(string supply, string? bank, SupplyTotal total)
    {
        if (total.Amps is { } amps)
            Keep(amps.Value, _ => 1);
        if (total.Watts is { } watts)
            Keep(watts.Value, volts => volts.Value);

        void Keep(decimal limit, Func<Volts, decimal> unit)
        {
            var run = new NaiveSum();
            var start = new NaiveSum();
            foreach (var (feed, _, loads) in _feeds)
            {
                var factor = 0m;
                for (var place = 0; place < feed.Outlets.Length; place++)
                {
                    var outlet = feed.Outlets[place].Rating;
                    if (outlet.Supply.Id == supply && (bank is null || outlet.Outlet.Bank == bank))
                        factor += unit(feed.At[place] ?? Volts.Zero) * (feed.Joined == Joint.Parallel ? 0.5m : 1);
                }

                foreach (var load in loads)
                {
                    run.Add(load.On, Nano(load.Run * factor));
                    start.Add(load.On, Nano(load.Start * factor));
                }
            }

            if (run.IsEmpty && start.IsEmpty)
                return;
            var most = Nano(limit) + Rounding;
            var usable = Nano(limit * (1 - _rig.HeadroomInForce)) + Rounding;
            var thin = Choice();
            _levels[4].Add(thin);
            _model.Add(run.Expression <= usable + ((most - usable) * thin));
            _model.Add(start.Expression <= most);
        }
    }

    /// <summary>One return for each that outlets share, and one for each feed of several loads on outlets of their own.</summary>
    private void JoinReturns()
    {
        var returns = new NaiveReturns(_model);
        var shared = _wired.Outlets.Items.CountBy(outlet => outlet.Rating.Return).Where(pair => pair.Value > 1).Select(pair => pair.Key).ToHashSet(StringComparer.Ordinal);
        foreach (var name in shared)
            returns.Add([.. _feeds.Where(one => one.Feed.Outlets[0].Rating.Return == name).SelectMany(one => one.Loads).Select(load => (load.Occupant, load.On))], _wired.Loads.Count);
        foreach (var (feed, _, loads) in _feeds)
        {
            if (!shared.Contains(feed.Outlets[0].Rating.Return) && loads.Count > 1 && feed.Lead is not null)
                returns.Add([.. loads.Select(load => (load.Occupant, load.On))], Math.Min(loads.Count, feed.Lead.LoadPlugs ?? loads.Count));
        }

        _levels[6] = returns.Findings;
        _levels[7] = returns.NoisyLoads;
    }

    private Rig Decode(CpSolver solver)
    {
        var wired = _wired.Feeds.Items.Select(feed => feed.Feed).ToList();
        foreach (var (feed, used, loads) in _feeds)
        {
            if (feed.Pinned is null && solver.Value(used) == 1)
            {
                wired.Add(feed.With(loads.Where(load => solver.Value(load.On) == 1).Select(load => load.Load.Id)));
            }
        }

        return _rig with { Wired = [.. wired] };
    }
}
