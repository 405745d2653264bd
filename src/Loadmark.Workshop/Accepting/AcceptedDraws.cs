using Loadmark.Core.LeadLists;
using Loadmark.Core.Readings;
using Loadmark.Storage.Acceptances;

namespace Loadmark.Workshop.Accepting;

/// <summary>The draws that a signed record has measured, as readings for the gear library.</summary>
public static class AcceptedDraws
{
    /// <summary>Lists them, in the order of measuring.</summary>
    /// <param name="result">What came of the record.</param>
    /// <param name="record">The signed record.</param>
    /// <returns>Each with its plug; the meter's accuracy is there where it is printed in shares, digits and amounts.</returns>
    /// <exception cref="ArgumentException">The record is not signed.</exception>
    public static IReadOnlyList<(PlugPlace Plug, DrawReading Reading)> Of(AcceptanceResult result, StoredAcceptance record)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(record);
        if (record.Signed is not { } signed)
            throw new ArgumentException("It is not signed.", nameof(record));
        var draws = new List<(PlugPlace, DrawReading)>();
        foreach (var point in result.Plan.Points)
        {
            if (result.Session.Of(point.Name).Draw is not { } draw)
                continue;
            draws.Add((point.Plug, new DrawReading
            {
                Kind = DrawKind.Running,
                Current = draw.Value,
                Meter = MeterOf(result.Session.AmpsAccuracy, draw),
                Taken = signed,
                Note = $"measured on {result.Plan.Rig.Name}, version {record.Content.Version}"
                    + (result.Session.By is { } by ? $", by {by}" : "")
                    + (result.Session.Meter is { } meter ? $", with {meter}" : ""),
            }));
        }

        return draws;
    }

    private static MeterAccuracy? MeterOf(PrintedAccuracy<Ampere>? accuracy, DisplayedValue<Ampere> draw) =>
        accuracy is { OfRange: 0 } known ? new MeterAccuracy(known.OfReading, known.Plus + (known.Digits * draw.Step)) : null;
}
