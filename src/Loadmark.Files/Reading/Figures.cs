using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Texts;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Reading;

/// <summary>Reads texts that hold figures. Each method adds an error and gives null when the text is not what it should be.</summary>
internal static class Figures
{
    private const string TotalForm = "amps, watts or both, such as 2 A, 18 W or 2 A 18 W";
    private const string MainsForm = "a mains voltage such as 230 V 50 Hz";
    private const string WireForm = "a conductor such as 0.22 mm² or AWG 24";
    private const string ShareForm = "a share such as 10 %";
    private const string VoltageForm = "a voltage such as 9 V, 9-18 V or 9 V AC";

    /// <summary>One quantity; where the key's name says the unit, a bare number will do.</summary>
    public static Quantity<TUnit>? Read<TUnit>(ScalarNode scalar, string key, string expected, bool mayBeZero, bool keySaysUnit, ErrorList errors)
        where TUnit : struct, IUnit
    {
        if (keySaysUnit && scalar.Value.AsSpan().Trim() is [.., var last] && char.IsAsciiDigit(last)
            && TryRead<TUnit>($"{scalar.Value} {TUnit.Symbol}", mayBeZero, out var bare, out _))
            return bare;
        if (TryRead<TUnit>(scalar.Value, mayBeZero, out var quantity, out var problem))
            return quantity;
        errors.Expected(scalar.Start, key, expected, scalar.Value, problem);
        return null;
    }

    /// <summary>A current, with how long it lasts where that is known.</summary>
    public static TimedCurrent? Timed(ScalarNode? scalar, string key, string example, ErrorList errors)
    {
        if (scalar is null)
            return null;
        var parts = FigureSplitter.Split(scalar.Value);
        var seconds = default(Seconds);
        var problem = parts.Count > 2 ? "there are more than two figures" : null;
        if (problem is null && TryRead<Ampere>(parts[0], mayBeZero: true, out var amps, out problem)
            && (parts.Count == 1 || TryRead(parts[1], mayBeZero: false, out seconds, out problem)))
        {
            return new TimedCurrent(amps, parts.Count == 1 ? null : seconds);
        }

        errors.Expected(scalar.Start, key, $"a current, and how long it lasts, such as {example}", scalar.Value, problem);
        return null;
    }

    /// <summary>The limit of several outlets together.</summary>
    public static SupplyTotal? Total(ScalarNode? scalar, string key, ErrorList errors)
    {
        if (scalar is null)
            return null;
        Amps? amps = null;
        Watts? watts = null;
        string? problem = null;
        foreach (var part in FigureSplitter.Split(scalar.Value))
        {
            if (TryRead<Ampere>(part, mayBeZero: false, out var current, out var notCurrent) && amps is null)
                amps = current;
            else if (TryRead<Watt>(part, mayBeZero: false, out var power, out var notPower) && watts is null)
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
    public static RigMains? Mains(ScalarNode? scalar, ErrorList errors)
    {
        if (scalar is null)
            return null;
        var parts = FigureSplitter.Split(scalar.Value);
        var hertz = default(Frequency);
        var problem = parts.Count > 2 ? "there are more than two figures" : null;
        if (problem is null && TryRead<Volt>(parts[0], mayBeZero: false, out var volts, out problem)
            && (parts.Count == 1 || TryRead(parts[1], mayBeZero: false, out hertz, out problem)))
        {
            return new RigMains(volts, parts.Count == 1 ? null : hertz);
        }

        errors.Expected(scalar.Start, "mains", MainsForm, scalar.Value, problem);
        return null;
    }

    /// <summary>A conductor by area or gauge.</summary>
    public static Wire? Conductor(ScalarNode? scalar, ErrorList errors)
    {
        if (scalar is null)
            return null;
        var text = scalar.Value.Trim();
        string? problem;
        if (text.Contains("AWG", StringComparison.OrdinalIgnoreCase))
        {
            var number = text.Replace("AWG", "", StringComparison.OrdinalIgnoreCase).Trim();
            if (PlainNumber.TryRead(number, out var gauge) && gauge == decimal.Truncate(gauge) && gauge is >= WireGauge.Thickest and <= WireGauge.Thinnest)
                return Wire.OfGauge((int)gauge);
            problem = $"gauges go from {WireGauge.Thickest} to {WireGauge.Thinnest}";
        }
        else if (TryRead<SquareMetre>(text, mayBeZero: false, out var area, out problem))
        {
            return Wire.OfArea(area);
        }

        errors.Expected(scalar.Start, "wire", WireForm, scalar.Value, problem);
        return null;
    }

    /// <summary>
    /// A share from 0 to below 1: "10 %", "10 percent" or 0.1. A bare number of one or more is refused, as it may be
    /// meant as a percentage or be a slip.
    /// </summary>
    public static decimal? Share(ScalarNode? scalar, ErrorList errors)
    {
        if (scalar is null)
            return null;
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
        if (PlainNumber.TryRead(text, out var number))
        {
            var share = percent ? number / 100 : number;
            if (share < 1)
                return share;
            if (!percent && number < 100)
                suggestion = $"{text} %";
            else
                problem = "it must be below 100 %";
        }

        errors.Expected(scalar.Start, "headroom", ShareForm, scalar.Value, problem, suggestion);
        return null;
    }

    /// <summary>A voltage typed beside a label, in the words of a label.</summary>
    public static Nameplate? Voltage(ScalarNode? scalar, string key, ErrorList errors)
    {
        if (scalar is null)
            return null;
        var text = scalar.Value;
        if (VoltageProblem(text) is not { } problem)
            return NameplateReader.Read(text);
        errors.Expected(scalar.Start, key, key == "mains" ? "a mains input such as 100-240 V" : VoltageForm, text, problem);
        return null;
    }

    /// <summary>A quantity, zero or not; the problem says why not.</summary>
    private static bool TryRead<TUnit>(string text, bool mayBeZero, out Quantity<TUnit> quantity, out string? problem)
        where TUnit : struct, IUnit
    {
        if (!QuantityReader.TryRead(text, out quantity, out problem))
            return false;
        if (mayBeZero || quantity > Quantity<TUnit>.Zero)
            return true;
        problem = "it must be more than zero";
        return false;
    }

    private static bool EndsLikeWatts(string part) => part.EndsWith('W') || part.EndsWith('w') || part.EndsWith("watts", StringComparison.OrdinalIgnoreCase);

    /// <summary>What is wrong with a voltage whatever the reading of its words; null when nothing is.</summary>
    private static string? VoltageProblem(string text)
    {
        var trimmed = text.AsSpan().Trim();
        if (trimmed.IsEmpty)
            return "it is empty";
        if (trimmed[0] is '-' or '\u2212' or '\u2013')
            return "a figure below zero makes no sense here";
        if (!trimmed.ContainsAnyInRange('0', '9'))
            return "there is no number in it";
        if (PlainNumber.TryRead(trimmed, out _))
            return "the unit is missing (V)";
        if (QuantityReader.TryRead<Volt>(trimmed, out var volts, out _))
            return volts == Volts.Zero ? "it must be more than zero" : null;

        // 1000 V is the most that any quantity takes; a longer run of digits is a slip, whatever stands round it.
        var digits = 0;
        foreach (var character in trimmed)
        {
            digits = char.IsAsciiDigit(character) ? digits + 1 : 0;
            if (digits > 4)
                return "it is more than anything on a pedalboard has";
        }

        return null;
    }
}
