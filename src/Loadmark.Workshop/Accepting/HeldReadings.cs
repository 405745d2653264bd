using System.Collections.Immutable;
using Loadmark.Core.Acceptance;
using Loadmark.Core.Rigs;
using Loadmark.Files;

namespace Loadmark.Workshop.Accepting;

/// <summary>What of a session still holds after the rig was changed.</summary>
/// <param name="Session">The session with those readings alone that hold, for the rig as it is now.</param>
/// <param name="Held">How many readings hold.</param>
/// <param name="Lost">
/// What has to be measured again, in words: the load, its plug and what was measured. A plug that is no longer there is named too.
/// </param>
public sealed record HeldReadings(BenchSession Session, int Held, ValueList<string> Lost)
{
    /// <summary>Tells what holds: each reading of which nothing that it depends on has changed.</summary>
    /// <param name="measured">The rig that was measured.</param>
    /// <param name="session">What was measured on it.</param>
    /// <param name="now">The rig as it is now.</param>
    public static HeldReadings Of(Rig measured, BenchSession session, Rig now)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(now);
        var (before, after) = (new ReadingScope(measured), new ReadingScope(now));
        var here = RigPlugs.Of(now).Plugs.Items.ToDictionary(static plug => plug.Name, StringComparer.Ordinal);
        var kept = ImmutableDictionary.CreateBuilder<string, BenchReading>();
        var (held, lost) = (0, new List<string>());
        foreach (var plug in RigPlugs.Of(measured).Plugs)
        {
            var reading = session.Of(plug.Name);
            var there = here.GetValueOrDefault(plug.Name);
            var still = new BenchReading
            {
                Open = Keep(reading.Open, BenchMeasure.Open),
                Loaded = Keep(reading.Loaded, BenchMeasure.Loaded),
                Draw = Keep(reading.Draw, BenchMeasure.Draw),
            };
            if (!still.IsEmpty)
                kept[plug.Name] = still;

            T? Keep<T>(T? value, BenchMeasure measure)
                where T : struct
            {
                if (value is null)
                    return null;
                if (there is not null && before.Of(plug, measure) == after.Of(there, measure))
                {
                    held++;
                    return value;
                }

                lost.Add($"{plug.Load.Id} at {plug.Name}, {MeasureText.Of(measure)}");
                return null;
            }
        }

        return new HeldReadings(session with { Readings = kept.ToImmutable(), RigVersion = RigVersion.Of(now) }, held, [.. lost]);
    }
}
