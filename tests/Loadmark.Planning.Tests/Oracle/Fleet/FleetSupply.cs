using System.Globalization;
using System.Text;

namespace Loadmark.Planning.Tests.Oracle.Fleet;

/// <summary>A supply off the shelf, with the loads that it was chosen for; used while a rig is put together.</summary>
internal sealed class FleetSupply(SupplyType type)
{
    // A tenth of each total stays free, as a rig wants it where it says nothing else.
    private decimal _milliwatts = 0.9m * (type.TotalMilliwatts ?? int.MaxValue);
    private decimal _milliamps = 0.9m * (type.TotalMilliamps ?? int.MaxValue);
    private decimal _startMilliwatts = type.TotalMilliwatts ?? int.MaxValue;
    private decimal _startMilliamps = type.TotalMilliamps ?? int.MaxValue;
    private readonly decimal[] _banks = [0.9m * (type.BankMilliamps ?? int.MaxValue), 0.9m * (type.BankMilliamps ?? int.MaxValue)];

    /// <summary>What it is.</summary>
    public SupplyType Type { get; } = type;

    /// <summary>The loads it was chosen for, outlet by outlet.</summary>
    public List<FleetLoad>[] On { get; } = [.. type.Outlets.Select(_ => new List<FleetLoad>())];

    /// <summary>How many of its outlets, from the last, are out of order and left out of the rig.</summary>
    public int Broken { get; set; }

    /// <summary>The outlets that it was chosen for.</summary>
    public int Used => On.Count(loads => loads.Count > 0);

    /// <summary>The loads that it was chosen for.</summary>
    public int Loads => On.Sum(loads => loads.Count);

    /// <summary>Puts a load on an outlet where it suits and everything stays within its limits with headroom.</summary>
    public bool TryPut(int outlet, FleetLoad load)
    {
        var kind = Type.Outlets[outlet];
        if (kind.IsAlternating != load.Type.IsAlternating || kind.HasWidePlug != load.Type.HasWidePin)
            return false;
        if (!Type.IsIsolated && Type.Outlets.Length > 1 && (load.Type.Isolate || load.Type.IsGroundPositive || load.Type.IsCentrePositive))
            return false;

        var run = load.Run + On[outlet].Sum(other => other.Run);
        var start = load.Start + On[outlet].Sum(other => other.Start);
        foreach (var (low, high, milliamps) in kind.Modes)
        {
            var most = load.Type.High ?? load.Type.Low;
            var volts = Math.Max(low, load.Type.Low);
            if (volts > Math.Min(high, most) || run > 0.9m * milliamps || start > milliamps)
                continue;
            if (load.Run * volts > _milliwatts || load.Run > _milliamps || load.Start * volts > _startMilliwatts || load.Start > _startMilliamps || load.Start > _banks[outlet % 2])
                continue;

            _milliwatts -= load.Run * volts;
            _milliamps -= load.Run;
            _startMilliwatts -= load.Start * volts;
            _startMilliamps -= load.Start;
            _banks[outlet % 2] -= load.Start;
            On[outlet].Add(load);
            return true;
        }

        return false;
    }

    /// <summary>Its lines in the rig file.</summary>
    public string Lines(string id)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"  {id}:\n    {Type.Head}\n");
        if (Type.IsIsolated)
            text.Append("    isolated: true\n");
        if (Type.TotalMilliwatts is { } watts)
            text.Append(CultureInfo.InvariantCulture, $"    total: {watts / 1000m} W\n");
        else if (Type.TotalMilliamps is { } amps)
            text.Append(CultureInfo.InvariantCulture, $"    total: {amps} mA\n");
        text.Append("    outlets:\n");
        for (var outlet = 0; outlet < Type.Outlets.Length - Broken; outlet++)
            text.Append(CultureInfo.InvariantCulture, $"      {outlet + 1}: {{ label: \"{Label(Type.Outlets[outlet])}\"{Keys(outlet)} }}\n");
        return text.ToString();
    }

    private static string Label(OutletType outlet) => string.Join("; ", outlet.Modes.Select(mode =>
        $"{(mode.Low == mode.High ? $"{mode.Low}" : $"{mode.Low}-{mode.High}")} V {(outlet.IsAlternating ? "AC" : "DC")} {mode.Milliamps} mA"));

    private string Keys(int outlet)
    {
        var kind = Type.Outlets[outlet];
        return (kind.IsAlternating ? "" : ", polarity: centre negative") + (kind.HasWidePlug ? ", plug: 5.5x2.5" : "") + kind.More
            + (Type.BankMilliamps is null ? "" : $", bank: {(outlet % 2 == 0 ? "A" : "B")}");
    }
}
