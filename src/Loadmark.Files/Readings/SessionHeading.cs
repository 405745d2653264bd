using System.Globalization;
using Loadmark.Core.Acceptance;
using Loadmark.Core.Readings;
using Loadmark.Files.Errors;

namespace Loadmark.Files.Readings;

/// <summary>Reads the lines above the readings: who measured, when, with which meter.</summary>
internal static class SessionHeading
{
    private const string AccuracyForm = "an accuracy as its maker prints it, such as 0.5 % + 2 digits";

    /// <summary>Reads a line; false where it is none of these.</summary>
    /// <param name="content">The line without spaces round it.</param>
    /// <param name="at">Where it begins.</param>
    /// <param name="session">What was read so far.</param>
    /// <param name="errors">Where faults go.</param>
    public static bool TryRead(string content, Spot at, ref BenchSession session, ErrorList errors)
    {
        var colon = content.IndexOf(':', StringComparison.Ordinal);
        if (colon <= 0)
            return false;
        var key = content[..colon].Trim().ToUpper(CultureInfo.InvariantCulture);
        var text = content[(colon + 1)..].Trim();
        var value = text.Length == 0 ? null : text;
        switch (key)
        {
            case "RIG" or "RIG VERSION" or "VERSION":
                session = session with { RigVersion = value };
                break;
            case "BY" or "MEASURED BY" or "WHO":
                session = session with { By = value };
                break;
            case "TAKEN" or "DATE" or "WHEN":
                session = session with { Taken = value };
                break;
            case "METER":
                session = session with { Meter = value };
                break;
            case "SERIAL" or "SERIAL NUMBER":
                session = session with { Serial = value };
                break;
            case "AMBIENT" or "TEMPERATURE":
                session = session with { Ambient = value };
                break;
            case "NOTE":
                session = session with { Note = value };
                break;
            case "VOLTS ACCURACY" or "ACCURACY VOLTS" or "VOLTS":
                session = session with { VoltsAccuracy = Accuracy<Volt>(content, value, at, errors) };
                break;
            case "AMPS ACCURACY" or "ACCURACY AMPS" or "AMPS":
                session = session with { AmpsAccuracy = Accuracy<Ampere>(content, value, at, errors) };
                break;
            default:
                return false;
        }

        return true;
    }

    private static PrintedAccuracy<TUnit>? Accuracy<TUnit>(string content, string? value, Spot at, ErrorList errors)
        where TUnit : struct, IUnit
    {
        if (value is null)
            return null;
        if (PrintedAccuracyReader.TryRead<TUnit>(value, out var accuracy, out var fault))
            return accuracy;
        errors.Expected(at, content[..content.IndexOf(':', StringComparison.Ordinal)], AccuracyForm, value, fault?.Problem);
        return null;
    }
}
