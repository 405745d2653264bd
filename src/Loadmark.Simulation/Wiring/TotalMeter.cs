using Loadmark.Core.Gear;
using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Wiring;

/// <summary>Adds up what the outlets of a supply or a bank give together, and keeps the most that it has seen.</summary>
internal sealed class TotalMeter
{
    private const double Slack = 1e-9;

    private readonly int[] _outlets;
    private readonly (string Supply, string Holder, SupplyTotal Limit) _total;
    private double _amps;
    private double _watts;

    private TotalMeter(RigCircuit circuit, string supply, string? bank, SupplyTotal limit)
    {
        _total = (supply, bank is null ? $"{supply} in all" : $"bank {bank} of {supply}", limit);
        _outlets =
        [
            .. Enumerable.Range(0, circuit.Outlets.Length).Where(place =>
                circuit.Outlets[place].Outlet.Rating.Supply.Id == supply
                    && (bank is null || circuit.Outlets[place].Outlet.Rating.Outlet.Bank == bank)),
        ];
    }

    /// <summary>A meter for each supply and each bank with a limit of its own that feeds something.</summary>
    public static TotalMeter[] Of(RigCircuit circuit)
    {
        var meters = new List<TotalMeter>();
        foreach (var supply in circuit.Rig.Supplies)
        {
            foreach (var bank in supply.Supply.Banks)
                meters.Add(new TotalMeter(circuit, supply.Supply.Id, bank.Name, bank.Total));
            if (supply.Total is { } total)
                meters.Add(new TotalMeter(circuit, supply.Supply.Id, null, total));
        }

        return [.. meters.Where(static meter => meter._outlets.Length > 0)];
    }

    /// <summary>The outlets that the meter adds up, by their place in <see cref="RigCircuit.Outlets"/>.</summary>
    public IReadOnlyList<int> Outlets => _outlets;

    /// <summary>Looks at what the outlets give at one time.</summary>
    /// <param name="given">Volts and amps of an outlet.</param>
    public void Read(Func<int, (double Volts, double Amps)> given)
    {
        var (amps, watts) = (0.0, 0.0);
        foreach (var outlet in _outlets)
        {
            var (volts, current) = given(outlet);
            amps += current;
            watts += current * volts;
        }

        _amps = Math.Max(_amps, amps);
        _watts = Math.Max(_watts, watts);
    }

    /// <summary>The most that the meter has seen, against the limit.</summary>
    public TotalGiven Result()
    {
        var limit = _total.Limit;
        var isOver = (limit.Amps is { } amps && _amps > (double)amps.Value + Slack)
            || (limit.Watts is { } watts && _watts > (double)watts.Value + Slack);
        var given = new SupplyTotal(
            limit.Amps is null ? null : SiConversion.Of<Ampere>(_amps),
            limit.Watts is null ? null : SiConversion.Of<Watt>(_watts));
        return new TotalGiven(_total.Supply, _total.Holder, limit, given, isOver);
    }
}
