using System.Globalization;
using System.Text;

namespace Loadmark.Planning.Tests.Oracle.Fleet;

/// <summary>A load off the shelf.</summary>
/// <param name="Tag">Its asset tag.</param>
/// <param name="Type">What it is.</param>
/// <param name="Run">What it draws when it runs, in milliamps at its lowest voltage.</param>
/// <param name="IsMeasured">Whether somebody measured that; else it is what is printed.</param>
/// <param name="Priority">1 to 3; null when not given.</param>
internal sealed record FleetLoad(string Tag, PedalType Type, int Run, bool IsMeasured, int? Priority)
{
    /// <summary>What it draws while it starts, in milliamps.</summary>
    public int Start => Type.StartPercent > 0 ? Math.Max(Run, Run * Type.StartPercent / 100) : Run;

    /// <summary>Whether it may stand on a chain without a word said: small, analog, of the usual polarity.</summary>
    public bool IsChainable => !Type.IsDigital && !Type.Isolate && !Type.IsGroundPositive && !Type.IsCentrePositive && Type.Low == 9 && !Type.IsAlternating;

    /// <summary>Takes a load of a type off the shelf; some were measured on the bench, and draw less than is printed.</summary>
    public static FleetLoad Draw(PedalType type, string tag, Random random)
    {
        var isMeasured = !type.InWatts && random.Next(5) < (type.Milliamps >= 20 ? 2 : 1);
        var run = isMeasured ? Math.Max(1, type.Milliamps * random.Next(55, 98) / 100) : type.Milliamps;
        int? priority = random.Next(20) switch { < 3 => 1, < 5 => 2, < 9 => 3, _ => null };
        return new FleetLoad(tag, type, run, isMeasured, priority);
    }

    /// <summary>Its line in the rig file.</summary>
    public string Line()
    {
        var text = new StringBuilder();
        var volts = Type.High is { } high ? $"{Type.Low}-{high}" : $"{Type.Low}";
        var draw = Type.InWatts ? $"{Type.Milliamps * Type.Low / 1000:0.####} W" : $"{Type.Milliamps} mA";
        text.Append(CultureInfo.InvariantCulture, $"  {Tag}: {{ kind: {Type.Kind}, label: \"{volts} V {(Type.IsAlternating ? "AC" : "DC")} {draw}\"");
        if (!Type.IsAlternating)
            text.Append(CultureInfo.InvariantCulture, $", polarity: centre {(Type.IsCentrePositive ? "positive" : "negative")}");
        if (Type.HasWidePin)
            text.Append(", plug: 5.5x2.5");
        if (IsMeasured)
            text.Append(CultureInfo.InvariantCulture, $", run: {Run} mA");
        if (Type.StartPercent > 0)
            text.Append(CultureInfo.InvariantCulture, $", start: {Start} mA{(Type.StartTenths > 0 ? $" for {Type.StartTenths / 10m} s" : "")}");
        if (Type.Isolate)
            text.Append(", isolate: true");
        if (Type.IsGroundPositive)
            text.Append(", ground: positive");
        if (Priority is { } priority)
            text.Append(CultureInfo.InvariantCulture, $", priority: {priority}");
        return text.Append(" }").ToString();
    }
}
