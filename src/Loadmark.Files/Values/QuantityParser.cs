using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Texts;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Values;

/// <summary>Reads texts that hold figures. Each method adds an error and gives null when the text is not what it should be.</summary>
internal static class QuantityParser
{
    private const string TotalForm = "amps, watts or both, such as 2 A, 18 W or 2 A 18 W";
    private const string MainsForm = "a mains voltage such as 230 V 50 Hz";
    private const string WireForm = "a conductor such as 0.22 mm² or AWG 24";
    private const string ShareForm = "a share such as 10 %";
    private const string VoltageForm = "a voltage such as 9 V, 9-18 V or 9 V AC";

    /// <summary>One quantity; where the key's name says the unit, a bare number will do.</summary>
    public static object? Read(
        Unit unit, ScalarNode scalar, string key, string expected, bool mayBeZero, bool keySaysUnit, ErrorList errors)
    {
        if (keySaysUnit && scalar.Value.AsSpan().Trim() is [.., var last] && char.IsAsciiDigit(last)
            && Read(unit, $"{scalar.Value} {unit.Symbol}", mayBeZero, out _) is { } bare)
            return bare;
        if (Read(unit, scalar.Value, mayBeZero, out var problem) is { } quantity)
            return quantity;
        errors.Expected(scalar.Start, key, expected, scalar.Value, problem);
        return null;
    }

    /// <summary>A current, with how long it lasts where that is known.</summary>
    public static TimedCurrent? Timed(ScalarNode scalar, string key, string example, ErrorList errors)
    {
        var parts = FigureSplitter.Split(scalar.Value, "for", ",", ";", "/");
        var problem = parts.Count > 2 ? "there are more than two figures" : null;
        if (problem is null && Read(Unit.Ampere, parts[0], mayBeZero: true, out problem) is Amps amps)
        {
            if (parts.Count == 1)
                return new TimedCurrent(amps, null);
            if (Read(Unit.Second, parts[1], mayBeZero: false, out problem) is Seconds seconds)
                return new TimedCurrent(amps, seconds);
        }

        errors.Expected(scalar.Start, key, $"a current, and how long it lasts, such as {example}", scalar.Value, problem);
        return null;
    }

    /// <summary>The limit of several outlets together.</summary>
    public static SupplyTotal? Total(ScalarNode scalar, string key, ErrorList errors)
    {
        Amps? amps = null;
        Watts? watts = null;
        string? problem = null;
        foreach (var part in FigureSplitter.Split(scalar.Value, ",", ";", "/"))
        {
            if (Read(Unit.Ampere, part, mayBeZero: false, out var notCurrent) is Amps current && amps is null)
                amps = current;
            else if (Read(Unit.Watt, part, mayBeZero: false, out var notPower) is Watts power && watts is null)
                watts = power;
            else
                problem ??= notCurrent is null || notPower is null ? "a figure stands twice" : EndsLikeWatts(part) ? notPower : notCurrent;
        }

        if (problem is null)
            return new SupplyTotal(amps, watts);
        errors.Expected(scalar.Start, key, TotalForm, scalar.Value, problem);
        return null;
    }

    /// <summary>The mains where the rig is played.</summary>
    public static RigMains? Mains(ScalarNode scalar, string key, ErrorList errors)
    {
        var parts = FigureSplitter.Split(scalar.Value, ",", ";", "/");
        if (parts[0].EndsWith('~'))
            parts[0] = parts[0][..^1].TrimEnd();
        var problem = parts.Count > 2 ? "there are more than two figures" : null;
        if (problem is null && Read(Unit.Volt, parts[0], mayBeZero: false, out problem) is Volts volts)
        {
            if (parts.Count == 1)
                return new RigMains(volts, null);
            if (Read(Unit.Hertz, parts[1], mayBeZero: false, out problem) is Frequency hertz)
                return new RigMains(volts, hertz);
        }

        errors.Expected(scalar.Start, key, MainsForm, scalar.Value, problem);
        return null;
    }

    /// <summary>A conductor by area or gauge.</summary>
    public static Wire? Conductor(ScalarNode scalar, string key, ErrorList errors)
    {
        var text = scalar.Value.Trim();
        string? problem;
        if (text.Contains("AWG", StringComparison.OrdinalIgnoreCase))
        {
            var number = text.StartsWith("AWG", StringComparison.OrdinalIgnoreCase)
                ? text[3..]
                : text.EndsWith("AWG", StringComparison.OrdinalIgnoreCase) ? text[..^3] : "";
            if (PlainNumber.TryWhole(number.Trim(), out var gauge) && gauge is >= WireGauge.Thickest and <= WireGauge.Thinnest)
                return Wire.OfGauge(gauge);
            problem = $"gauges go from {WireGauge.Thickest} to {WireGauge.Thinnest}";
        }
        else if (Read(Unit.SquareMetre, text, mayBeZero: false, out problem) is SquareMetres area)
        {
            return Wire.OfArea(area);
        }

        errors.Expected(scalar.Start, key, WireForm, scalar.Value, problem);
        return null;
    }

    /// <summary>
    /// A share from 0 to below 1: "10 %", "10 percent" or 0.1. A bare number of one or more is refused, as it may be
    /// meant as a percentage or be a slip.
    /// </summary>
    public static decimal? Share(ScalarNode scalar, string key, ErrorList errors)
    {
        var text = scalar.Value.AsSpan().Trim();
        var percent = false;
        foreach (var word in (ReadOnlySpan<string>)["%", "percent", "per cent"])
        {
            if (text.EndsWith(word, StringComparison.OrdinalIgnoreCase))
            {
                text = text[..^word.Length].TrimEnd();
                percent = true;
                break;
            }
        }

        string? suggestion = null;
        string? problem = null;
        if (PlainNumber.MayBeThousands(text))
        {
            problem = "the comma may mean a decimal point or thousands; write the number without it";
        }
        else if (PlainNumber.TryRead(text, out var number))
        {
            var share = percent ? number / 100 : number;
            if (share < 1)
                return share;
            if (!percent && number < 100)
                suggestion = $"{text} %";
            else
                problem = "it must be below 100 %";
        }

        errors.Expected(scalar.Start, key, ShareForm, scalar.Value, problem, suggestion);
        return null;
    }

    /// <summary>A voltage typed beside a label, in the words of a label.</summary>
    public static Nameplate? Voltage(ScalarNode scalar, string key, ErrorList errors)
    {
        if (TypedVoltage.Read(scalar.Value, out var problem) is { } reading)
            return reading;
        errors.Expected(scalar.Start, key, VoltageForm, scalar.Value, problem);
        return null;
    }

    /// <summary>The mains input of a supply, in the words of a label.</summary>
    public static Nameplate? MainsInput(ScalarNode scalar, string key, ErrorList errors)
    {
        if (TypedVoltage.ReadMains(scalar.Value, out var problem) is { } reading)
            return reading;
        errors.Expected(scalar.Start, key, "a mains input such as 100-240 V", scalar.Value, problem);
        return null;
    }

    /// <summary>A quantity, zero or not; the problem says why not.</summary>
    private static object? Read(Unit unit, string text, bool mayBeZero, out string? problem)
    {
        var quantity = unit.Read(text, out problem);
        if (quantity is null || mayBeZero || unit.ValueOf(quantity) > 0)
            return quantity;
        problem = "it must be more than zero";
        return null;
    }

    private static bool EndsLikeWatts(string part) =>
        part.EndsWith('W') || part.EndsWith('w') || part.EndsWith("watts", StringComparison.OrdinalIgnoreCase);
}
