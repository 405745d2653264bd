using Loadmark.Core.Acceptance;
using Loadmark.Core.Display;

namespace Loadmark.Workshop.Accepting;

/// <summary>What a measured draw means.</summary>
internal static class DrawMeaning
{
    /// <summary>The judged draw with what it means and what is next.</summary>
    public static JudgedMeasure Tell(BenchSession session, JudgedMeasure judged)
    {
        var (load, read) = (judged.Point.Plug.Load.Id, FigureDisplay.Said(judged.ReadAmps));
        var putIn = $"Put what was measured into the rig file (run: {read}) and check the rig again.";
        if (judged.ExpectedAmps is not { } expected)
            return judged with
            {
                Means = $"The rig does not tell what {load} draws, so there is nothing to compare it with.",
                Next = putIn,
            };
        return judged.Judged switch
        {
            Conformity.Fail => judged with
            {
                Means = $"{load} draws {FigureDisplay.Said(judged.ReadAmps - expected.High)} more than the "
                    + $"{FigureDisplay.Said(expected.High)} that the rig counts with.",
                Next = putIn + " If the label says less than that, have the load looked at.",
            },
            Conformity.NotSure => judged with
            {
                Means = MeterMeaning.Of(session.AmpsAccuracy is null, "the amps range"),
                Next = session.AmpsAccuracy is null ? MeterMeaning.NextForAccuracy("amps accuracy") : putIn,
            },
            _ when judged.ReadAmps < expected.Low * 0.1m => judged with
            {
                Judged = Conformity.NotSure,
                Means = $"Next to nothing: it looks as if {load} was not on.",
                Next = "Switch it on, with a plug in its input where that switches it, and measure again.",
            },
            _ => judged,
        };
    }
}
