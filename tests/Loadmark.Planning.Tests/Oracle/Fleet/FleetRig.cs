using System.Text;

namespace Loadmark.Planning.Tests.Oracle.Fleet;

/// <summary>
/// Writes rigs of any size as a hire workshop would put them together, the same for the same seed: loads off the shelf,
/// then supplies and leads until every load has a place. From a rig that is to be short, supplies, outlets and leads are
/// taken away again; most such rigs cannot be fed wholly, and the planner has to find out which.
/// </summary>
internal sealed class FleetRig
{
    // Seeded and not for secrets: the same rig every time.
    private readonly Random _random;
    private readonly int _seed;
    private readonly bool _hasChains;
    private readonly List<FleetLoad> _loads = [];
    private readonly List<FleetSupply> _supplies = [];
    private readonly SortedDictionary<int, int> _chains = [];
    private readonly string _text;
    private int _reversing;

    /// <summary>Puts a rig together.</summary>
    /// <param name="seed">The same seed and size make the same rig.</param>
    /// <param name="loads">How many loads.</param>
    /// <param name="isShort">Whether something is taken away again.</param>
    /// <param name="hasChains">Whether there are leads that feed several loads or join outlets; else reversing ones only.</param>
    public FleetRig(int seed, int loads, bool isShort, bool hasChains = true)
    {
        _seed = seed;
        _hasChains = hasChains;
        _random = new Random((seed * 7919) + loads);
        PickLoads(loads);
        PickSupplies();
        if (isShort)
            TakeAway();
        _text = Write();
    }

    /// <summary>The rig file's text.</summary>
    public override string ToString() => _text;

    private string Write()
    {
        var text = new StringBuilder();
        text.Append($"rig: Fleet rig {_seed} of {_loads.Count} loads\nmains: 230 V 50 Hz\n");
        text.Append("loads:\n");
        foreach (var load in _loads)
            text.Append(load.Line()).Append('\n');
        text.Append("supplies:\n");
        for (var place = 0; place < _supplies.Count; place++)
            text.Append(_supplies[place].Lines($"S{place + 1}"));
        WriteLeads(text);
        var path = _loads.Where(_ => _random.Next(7) > 0).Select(load => load.Tag).Append("amp");
        return text.Append($"signal: [{string.Join(", ", path)}]\n").ToString();
    }

    private void PickLoads(int count)
    {
        var sum = PedalCatalogue.All.Sum(type => type.Weight);
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var place = 0; place < count; place++)
        {
            var pick = _random.Next(sum);
            var type = PedalCatalogue.All.First(type => (pick -= type.Weight) < 0);
            var number = numbers[type.Tag] = numbers.GetValueOrDefault(type.Tag) + 1;
            _loads.Add(FleetLoad.Draw(type, $"{type.Tag}-{number:00}", _random));
        }
    }

    private void PickSupplies()
    {
        var sum = SupplyCatalogue.Units.Sum(type => type.Weight);
        var pending = _loads.OrderBy(_ => _random.Next()).ToList();
        while (pending.Count > 0)
        {
            FleetSupply? supply = null;
            for (var attempt = 0; attempt < 4 && supply is null && pending.Count > 2; attempt++)
            {
                var pick = _random.Next(sum);
                var tried = Fill(SupplyCatalogue.Units.First(type => (pick -= type.Weight) < 0), pending);
                if (tried.Used * 4 >= tried.Type.Outlets.Length * 3)
                    supply = tried;
            }

            // What no unit suits gets an adaptor, which feeds a chain where there are loads for one.
            supply ??= SupplyCatalogue.Adaptors.Where(type => new FleetSupply(type).TryPut(0, pending[0])).Take(1)
                .Select(type => Fill(type, pending)).Single();
            _supplies.Add(supply);
            foreach (var on in supply.On)
            {
                pending.RemoveAll(on.Contains);
                _reversing += on.Count(load => load.Type.IsCentrePositive);
                if (on.Count > 1)
                    _chains[on.Count] = _chains.GetValueOrDefault(on.Count) + 1;
            }
        }
    }

    private FleetSupply Fill(SupplyType type, List<FleetLoad> pending)
    {
        var supply = new FleetSupply(type);
        var left = pending.ToList();
        for (var outlet = 0; outlet < type.Outlets.Length; outlet++)
        {
            // Nearly always the largest that it bears, as a technician would; now and then just any.
            var ordered = type.Outlets.Length == 1 ? left : _random.Next(4) > 0 ? [.. left.OrderByDescending(load => load.Run)] : left;
            var most = _hasChains && _random.Next(type.Outlets.Length == 1 ? 2 : 6) == 0 ? _random.Next(2, type.Outlets.Length == 1 ? 8 : 5) : 1;
            if (most > 1 && type.Outlets.Length > 1)
                ordered = [.. left.Where(load => load.IsChainable)];
            foreach (var load in ordered)
            {
                var on = supply.On[outlet];
                if (on.Count == most)
                    break;
                if (on.Count == 0 || (on[0].IsChainable && load.IsChainable))
                    supply.TryPut(outlet, load);
            }

            left.RemoveAll(supply.On[outlet].Contains);
        }

        return supply;
    }

    private void TakeAway()
    {
        var spare = _supplies.Sum(supply => supply.Type.Outlets.Length - supply.Used);
        var most = Math.Max(1, _loads.Count / 25) + spare;
        var lost = 0;
        foreach (var supply in _supplies.OrderBy(_ => _random.Next()).ToList())
        {
            if (supply.Loads > 0 && supply.Loads + lost <= most && _supplies.Count > 1)
            {
                _supplies.Remove(supply);
                lost += supply.Loads;
            }
        }

        foreach (var supply in _supplies.OrderByDescending(supply => supply.Type.Outlets.Length).ToList())
        {
            while (lost < most && supply.Broken + 2 < supply.Type.Outlets.Length)
            {
                supply.Broken++;
                lost += Math.Max(1, supply.On[supply.Type.Outlets.Length - supply.Broken].Count);
            }
        }
    }

    private void WriteLeads(StringBuilder text)
    {
        var lines = new List<string>();
        foreach (var (plugs, count) in _chains)
            lines.Add($"  chain of {plugs}: {{ type: daisy chain, plugs: {plugs}, count: {count} }}");
        if (_hasChains && _random.Next(8) == 0)
            lines.Add("  old chain: { type: daisy chain }");
        var reversing = _reversing + (_random.Next(3) == 0 ? 1 : 0);
        if (reversing > 0)
            lines.Add($"  flip: {{ type: reversing, count: {reversing} }}");
        if (_hasChains && _random.Next(3) == 0)
            lines.Add("  in line: { type: series }");
        if (_hasChains && _random.Next(4) == 0)
            lines.Add("  side by side: { type: parallel }");
        if (lines.Count > 0)
            text.Append("leads:\n").AppendJoin('\n', lines).Append('\n');
    }
}
