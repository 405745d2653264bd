using Loadmark.Processes;
using Loadmark.Simulation.Spreading;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Commands;

/// <summary>Samples for a command, and says how far the sampling has come.</summary>
internal static class SpreadRun
{
    /// <summary>Runs the samples that were asked for; null where none were.</summary>
    /// <param name="sampling">What was asked for; null where no spread was.</param>
    /// <param name="process">Where to say how far it has come.</param>
    /// <param name="run">Samples with some options.</param>
    /// <returns>The spread; null where none was asked for.</returns>
    public static SpreadResult? Of(Sampling? sampling, ProcessContext process, Func<SpreadOptions, SpreadResult> run)
    {
        if (sampling is null)
            return null;
        using var talk = new ProgressNotice<SpreadProgress>(
            process, static at => $"{at.Done} of {at.Samples} samples. Ctrl-C shows what was sampled so far.");
        return run(sampling.Options(talk));
    }
}
