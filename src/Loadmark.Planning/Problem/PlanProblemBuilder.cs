using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Loadmark.Core.Checks;
using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>Builds a <see cref="PlanProblem"/>; an instance serves once.</summary>
internal sealed class PlanProblemBuilder
{
    private readonly WiredRig _pinned;
    private readonly decimal _headroom;
    private readonly SignalPath _signal;
    private readonly LoadRating[] _ratings;
    private readonly IReadOnlySet<string>? _certain;
    private readonly PlannedInputs _inputs;
    private readonly PresentWiring? _present;
    private readonly ImmutableDictionary<int, LoadHome>? _homes;
    private readonly bool _isNarrowed;
    private readonly bool _acrossBoards;
    private readonly bool _isQuiet;
    private readonly List<LoadGroup> _loads = [];
    private readonly List<OutletGroup> _outlets = [];
    private readonly Dictionary<string, ImmutableArray<WiredLoad>> _pinnedOnReturn = new(StringComparer.Ordinal);

    /// <summary>Looks a rig up.</summary>
    /// <param name="rig">The rig; of its wiring only pinned feeds count.</param>
    /// <param name="certain">The supplies of which only what is known to suit a load may feed it; null for none.</param>
    /// <param name="inputs">The supplies that are to be fed as loads are; null for none.</param>
    /// <param name="present">The present wiring, of which as little as can be is to be moved; null where that does not count.</param>
    /// <param name="acrossBoards">Whether supplies of one board may feed loads of another.</param>
    /// <param name="isQuiet">Whether no return may have a finding of noise.</param>
    public PlanProblemBuilder(
        Rig rig,
        IReadOnlySet<string>? certain = null,
        PlannedInputs? inputs = null,
        PresentWiring? present = null,
        bool acrossBoards = false,
        bool isQuiet = false)
    {
        _pinned = WiredRig.Of(rig with { Wired = [.. (rig.Wired ?? []).Items.Where(feed => feed.Pinned)] });
        _headroom = rig.HeadroomInForce;
        _signal = new SignalPath(rig);
        _ratings = [.. _pinned.Loads.Items.Select(static load => load.Rating)];
        _certain = certain;
        _inputs = inputs ?? PlannedInputs.None;
        _present = present;
        (_acrossBoards, _isQuiet) = (acrossBoards, isQuiet);
        if (present is not null)
            _homes = HomeFinder.Find(present, _pinned, FedSupplies.DarkLoads(_pinned, _inputs), out _isNarrowed);
    }

    /// <summary>Builds the problem.</summary>
    /// <param name="only">The supplies that may be used; null for all.</param>
    public PlanProblem Build(IReadOnlySet<string>? only)
    {
        GroupOutlets(only);
        GroupLoads();
        var singles = Source.All(_outlets, _headroom);
        var slots = new LeadSlotBuilder(
            _pinned, _outlets, new FeedClassBuilder(singles, _headroom), _loads.Sum(load => load.Count), isPooled: false, _homes);
        slots.Build();
        ImmutableArray<TotalLimit> totals = [.. new TotalLimitBuilder(_pinned, _headroom).Build()];
        return new PlanProblem
        {
            Pinned = _pinned,
            IsQuiet = _isQuiet,
            Loads = [.. _loads],
            Outlets = [.. _outlets],
            Singles = singles,
            Slots = [.. slots.Slots],
            SlotLeads = [.. slots.SlotLeads],
            SingleLeads = [.. slots.Singles],
            Totals = totals,
            AlikeSupplies = [.. AlikeSupplies(totals)],
            PinnedOnReturn = _pinnedOnReturn.ToImmutableDictionary(StringComparer.Ordinal),
            Homes = _homes,
            IsNarrowed = _isNarrowed || (_homes?.Values.Any(static home => home.IsShared) is true
                && _pinned.Rig.Leads.Items.Any(static lead => lead.Type == LeadType.Parallel)),
        };
    }

    /// <summary>Supplies that have the same outlets and the same totals left; those with pinned loads on a return are like none.</summary>
    private IEnumerable<ImmutableArray<ImmutableArray<OutletGroup>>> AlikeSupplies(ImmutableArray<TotalLimit> totals)
    {
        var supplies = _outlets.Where(group => !group.IsOfSeveralSupplies).GroupBy(group => group.Rating.Supply.Id, StringComparer.Ordinal)
            .Where(
                supply => !supply.Any(
                    group => group.PlannedInput is not null || group.SharedReturn is { } shared && _pinnedOnReturn.ContainsKey(shared)));
        return supplies.GroupBy(supply => (
                string.Join('\n', supply.Select(group => $"{group.Count} {group.Look} {group.SharedReturn is null} {group.Board}")),
                string.Join(
                    '\n',
                    totals.Where(total => total.Supply == supply.Key)
                        .Select(total => $"{total.Bank} {total.InWatts} {total.Run} {total.Usable} {total.Start} {total.IsOver}"))))
            .Where(alike => alike.Count() > 1)
            .Select(alike => alike.Select(supply => supply.ToImmutableArray()).ToImmutableArray());
    }

    private void GroupLoads()
    {
        var groups = new Dictionary<object, LoadGroup>();
        var mayMeetWindings = _ratings.Any(MayTakeAlternating);
        foreach (var load in FedSupplies.DarkLoads(_pinned, _inputs))
        {
            var isInSignal = mayMeetWindings && _signal.Contains(load.Id);
            var isInput = _inputs.Has(load);
            var home = _homes?.GetValueOrDefault(load.Index);
            var isWired = _present?.IsWired(load.Id) is true;
            var board = BoardOf(load.Rating.Load.Board);
            var like = isInput ? load.Id : LoadGroup.Key(load.Rating, isInSignal);
            var key = (like, isWired, home is null ? null : KeyOf(home), board);
            if (!groups.TryGetValue(key, out var group))
            {
                groups.Add(key, group = new LoadGroup(_loads.Count, load.Rating, isInSignal)
                {
                    Darkness = isInput ? _inputs.Weight : 1,
                    Home = home,
                    IsWired = isWired,
                    Board = board,
                    IsKeptApart = _isQuiet,
                });
                _loads.Add(group);
            }

            group.Members.Add(load.Index);
        }
    }

    /// <summary>A board as it counts here: in one case, and none where boards may help each other.</summary>
    private string? BoardOf(string? board) => _acrossBoards ? null : board?.ToUpperInvariant();

    /// <summary>What must be equal for two homes to be alike: where several loads are on one feed, the feed itself.</summary>
    private string KeyOf(LoadHome home)
    {
        if (home.IsShared)
            return $"feed {home.Index}";
        var lead = _pinned.Rig.Leads.Items.FirstOrDefault(lead => lead.Id == home.Lead);
        var outlets = home.Outlets.Select(
            outlet => string.Create(
                CultureInfo.InvariantCulture,
                $"{_outlets.FindIndex(group => group.Members.Contains(outlet.Outlet))} at {outlet.Volts?.Value}"));
        return $"{string.Join(' ', outlets)} {home.Feed.Joined} {lead?.Type} {lead?.Plug} {lead?.LoadPlugs}";
    }

    private static bool MayTakeAlternating(LoadRating load) =>
        load.TakesEitherForm || load.Form is not { IsKnown: true, Value: SupplyForm.Direct };

    private void GroupOutlets(IReadOnlySet<string>? only)
    {
        var idle = SuppliesForOtherMains();
        idle.UnionWith(FedSupplies.Idle(_pinned, _inputs));
        var sharers = _pinned.Outlets.Items.GroupBy(outlet => outlet.Rating.Return, StringComparer.Ordinal)
            .ToDictionary(outlets => outlets.Key, outlets => outlets.Count(), StringComparer.Ordinal);
        var series = _pinned.Feeds.Items.Where(feed => feed.Joined == Joint.Series).SelectMany(feed => feed.Outlets)
            .Select(outlet => outlet.ReturnGroup).ToHashSet();
        var names = new Dictionary<ReturnGroup, string>();
        var mergeable = SuppliesWithoutTotals();
        var homes = _homes?.Values ?? [];
        var listed = homes.Where(static home => home.Lead is not null).SelectMany(static home => home.Outlets)
            .Select(static one => one.Outlet).ToHashSet();
        var apart = homes.Where(static home => home.IsShared)
            .SelectMany(static home => home.Outlets, static (home, one) => (one.Outlet, First: home.Outlets[0].Outlet))
            .DistinctBy(static pair => pair.Outlet).ToDictionary(static pair => pair.Outlet, static pair => pair.First);
        var groups = new Dictionary<(string?, string?, string, bool, int, string?), OutletGroup>();
        foreach (var outlet in _pinned.Outlets)
        {
            var supply = outlet.Rating.Supply.Id;
            string? shared = null;
            if (outlet.ReturnGroup.IsInUse || (!outlet.Rating.Isolated.Value && sharers[outlet.Rating.Return] > 1))
                shared = NameReturn(outlet, names);

            // Another feed on the return of a series pair shorts one of its outlets through the audio leads.
            if (outlet.Feeds.Count > 0 || idle.Contains(supply) || only?.Contains(supply) is false || series.Contains(outlet.ReturnGroup))
                continue;

            var look = LookOf(outlet);
            var isOfSeveral = shared is null && mergeable.Contains(supply);
            var mustBeCertain = _certain?.Contains(supply) is true;
            var board = BoardOf(outlet.Rating.Supply.Board);
            var key = (isOfSeveral ? null : supply, shared, look, mustBeCertain, apart.GetValueOrDefault(outlet.Index, -1), board);
            if (!groups.TryGetValue(key, out var group))
            {
                ImmutableArray<Setting> settings = [.. Setting.Of(outlet.Rating, outlet.Supply, _ratings)];
                var capacity = settings.Length == 0 ? 0 : settings.Max(setting => MicroUnits.Nearest(setting.Limit ?? 0));
                groups.Add(key, group = new OutletGroup(_outlets.Count, outlet.Rating, shared, settings, capacity)
                {
                    Look = look,
                    IsOfSeveralSupplies = isOfSeveral,
                    MustBeCertain = mustBeCertain,
                    Board = board,
                    PlannedInput = _inputs.Supplies.Contains(supply) ? supply : null,
                });
                _outlets.Add(group);
            }

            group.Members.Add(outlet.Index);
            group.IsHome |= listed.Contains(outlet.Index);
        }
    }

    /// <summary>A supply that the mains here would harm, or would not do for, feeds nothing; the rule says which that is.</summary>
    private HashSet<string> SuppliesForOtherMains() =>
        OtherMains.In(NameplateCheck.Of(_pinned)).Select(static finding => finding.Subjects[0]).ToHashSet(StringComparer.Ordinal);

    private string NameReturn(WiredOutlet outlet, Dictionary<ReturnGroup, string> names)
    {
        var group = outlet.ReturnGroup;
        if (!group.IsInUse)
            return outlet.Rating.Return;

        // Returns that a pinned feed joins are one, be it over the input of a supply.
        if (!names.TryGetValue(group, out var name))
        {
            names.Add(group, name = outlet.Rating.Return);
            _pinnedOnReturn.Add(name, [.. group.Loads]);
        }

        return name;
    }

    /// <summary>
    /// Supplies of which it does not matter whose outlet is used: no total binds them. Parallel leads want two outlets of one supply.
    /// </summary>
    private HashSet<string> SuppliesWithoutTotals() => _pinned.Rig.Leads.Items.Any(lead => lead.Type == LeadType.Parallel)
        ? []
        : _pinned.Supplies.Items.Where(
            supply => supply.Total is null && supply.Supply.Banks.Count == 0 && !_inputs.Supplies.Contains(supply.Supply.Id))
            .Select(supply => supply.Supply.Id).ToHashSet(StringComparer.Ordinal);

    /// <summary>All that a plan looks at in an outlet, but for whose it is.</summary>
    private static string LookOf(WiredOutlet outlet)
    {
        var rating = outlet.Rating;
        var text = new StringBuilder();
        foreach (var mode in rating.Modes)
            text.Append(
                CultureInfo.InvariantCulture,
                $"{mode.Volts?.Low.Value}-{mode.Volts?.High.Value} V {mode.Limit?.Value.Value} A {mode.Limit?.Origin} "
                + $"{mode.Power?.Value} W;");
        text.Append(
            CultureInfo.InvariantCulture,
            $"{rating.Form.Value} {rating.Form.IsKnown} {rating.Polarity.Value} {rating.Polarity.IsKnown} {rating.Plug.Value} "
            + $"{rating.Plug.IsKnown} ");
        text.Append(CultureInfo.InvariantCulture, $"bank {rating.Outlet.Bank} {outlet.Supply.Regulated} {outlet.Supply.MayBeUnregulated} ");
        text.Append(
            CultureInfo.InvariantCulture,
            $"{rating.Outlet.Surge?.Current.Value} A {rating.Outlet.Surge?.Duration?.Value} s {rating.NoLoad?.Value.Value} V "
            + $"{rating.Outlet.SourceOhms?.Value} ohms");
        return text.ToString();
    }
}
