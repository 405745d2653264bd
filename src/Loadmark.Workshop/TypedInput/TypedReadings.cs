using Loadmark.Core.Readings;
using Loadmark.Files.Forms;

namespace Loadmark.Workshop.TypedInput;

/// <summary>What a meter showed, as it was typed.</summary>
public static class TypedReadings
{
    /// <summary>Reads what was typed of a running and a starting current.</summary>
    /// <param name="run">The running current, such as <c>212 mA</c>; null where it was not measured.</param>
    /// <param name="start">The starting current, such as <c>520 mA for 1.5 s</c>; null where it was not measured.</param>
    /// <param name="accuracy">The meter's accuracy, such as <c>1 % + 2 mA</c>; null where it is not known.</param>
    /// <param name="note">What there is to say of it; null for nothing.</param>
    /// <param name="now">When it was measured.</param>
    /// <param name="complaint">What is wrong with it, as a sentence; null where nothing is.</param>
    /// <param name="mark">What stands before an option's name where it was typed.</param>
    /// <returns>One reading or two; null where something is wrong.</returns>
    public static IReadOnlyList<DrawReading>? Read(
        string? run, string? start, string? accuracy, string? note, DateTimeOffset now, out string? complaint, string mark = "--")
    {
        var typed = GearForm.ReadLoad(
            "typed", new Dictionary<string, string>(StringComparer.Ordinal) { ["run"] = run ?? "", ["start"] = start ?? "" });
        complaint = typed.Value is null ? mark + typed.Faults.First().Value : null;
        MeterAccuracy? meter = null;
        if (accuracy is not null)
        {
            if (MeterAccuracyReader.TryRead(accuracy, out var read, out var problem))
                meter = read;
            else
                complaint ??= $"{mark}meter: expected the meter's accuracy, such as \"1 % + 2 mA\", found \"{accuracy}\"; {problem}";
        }

        if (complaint is not null)
            return null;
        var readings = new List<DrawReading>();
        if (typed.Value!.Run is { } running)
            readings.Add(new DrawReading { Kind = DrawKind.Running, Current = running, Meter = meter, Taken = now, Note = note });
        if (typed.Value.Start is { } starting)
            readings.Add(new DrawReading
            {
                Kind = DrawKind.Starting,
                Current = starting.Current,
                Duration = starting.Duration,
                Meter = meter,
                Taken = now,
                Note = note,
            });
        return readings;
    }
}
