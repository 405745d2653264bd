using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Starting;

/// <summary>What the first seconds come to, in words for a technician: the same at the terminal and on paper.</summary>
public static class StartUpText
{
    /// <summary>Whether it all comes up, in a sentence.</summary>
    /// <param name="started">The first seconds.</param>
    public static string Verdict(StartUpResult started)
    {
        ArgumentNullException.ThrowIfNull(started);
        var failing = Failing(started);
        return (failing.Count, started.IsComplete) switch
        {
            (_, false) => $"The first {FigureDisplay.Said(started.Duration)} could be computed, no more.",
            (0, _) when started.SettledAfter is { } after =>
                $"Everything comes up and stays up; at rest after {FigureDisplay.Said(after)}.",
            (0, _) => "Everything comes up and stays up, but what the outlets do never comes to rest.",
            _ => $"In the first {FigureDisplay.Said(started.Duration)} {Phrases.List(failing)} {Phrases.Verb(failing.Count, "does", "do")} "
                + "not come up properly.",
        };
    }

    /// <summary>Whether all of it was computed, and every load runs at the end.</summary>
    public static bool AllComesUp(StartUpResult started)
    {
        ArgumentNullException.ThrowIfNull(started);
        return started.IsComplete && Failing(started).Count == 0;
    }

    /// <summary>How a load fares at the end: "runs", "off: starts and drops out over and over".</summary>
    public static string State(StartedLoad load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return (load.State, load.Cycles) switch
        {
            (LoadState.Runs, _) => "runs",
            (LoadState.Low, _) => "low",
            (_, true) => "off: starts and drops out over and over",
            _ => load.Because is { } because ? $"off: {because}" : "off",
        };
    }

    /// <summary>The most that an outlet gave: a range where charging capacitors decide it.</summary>
    public static string Peak(StartedOutlet outlet)
    {
        ArgumentNullException.ThrowIfNull(outlet);
        return outlet.Pulse?.Peaks ?? FigureDisplay.Said(outlet.PeakAmps);
    }

    /// <summary>How long an outlet was at its limit or over it; "-" where it never was.</summary>
    public static string OverLimit(StartedOutlet outlet)
    {
        ArgumentNullException.ThrowIfNull(outlet);
        var (least, most) = outlet.Pulse is { } pulse ? (pulse.OverLimitLeast, pulse.OverLimitMost) : (outlet.OverLimit, outlet.OverLimit);
        var time = most.Value == 0 ? "-"
            : least == most ? FigureDisplay.Said(least) : $"{FigureDisplay.Said(least)} to {FigureDisplay.Said(most)}";
        return time + (outlet.SurgeIsSpent ? ", longer than it bears its surge" : "");
    }

    private static List<string> Failing(StartUpResult started) =>
        [.. started.Loads.Items.Where(static load => load.State != LoadState.Runs).Select(static load => load.Load)];
}
