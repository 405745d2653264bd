using System.Globalization;
using Loadmark.Simulation.Spreading;

namespace Loadmark.Workshop.TypedInput;

/// <summary>The wish to see what becomes of an answer when the figures of a rig are not known exactly.</summary>
/// <param name="Samples">How many samples, 1 to <see cref="SpreadOptions.MostSamples"/>.</param>
/// <param name="Seed">The seed that they follow from.</param>
public sealed record Sampling(int Samples, ulong Seed)
{
    private const ulong CommonSeed = 1;

    /// <summary>Reads what was typed; null where no spread was asked for.</summary>
    /// <param name="spread">What follows <c>--spread</c>; null where it was not typed.</param>
    /// <param name="seed">What follows <c>--seed</c>; null where it was not typed.</param>
    /// <param name="complaint">What is wrong with it, as a sentence; null where nothing is.</param>
    /// <param name="mark">What stands before an option's name where it was typed.</param>
    public static Sampling? Read(string? spread, string? seed, out string? complaint, string mark = "--")
    {
        complaint = null;
        var number = CommonSeed;
        if (spread is null)
        {
            complaint = seed is null ? null : $"{mark}seed needs {mark}spread N: it is the seed of its samples.";
            return null;
        }

        if (!int.TryParse(spread, NumberStyles.None, CultureInfo.InvariantCulture, out var samples)
            || samples is < 1 or > SpreadOptions.MostSamples)
            complaint = $"{mark}spread takes the number of samples, 1 to {SpreadOptions.MostSamples}, not {spread}.";
        else if (seed is not null && !ulong.TryParse(seed, NumberStyles.None, CultureInfo.InvariantCulture, out number))
            complaint = $"{mark}seed takes a whole number, 0 to {ulong.MaxValue}, not {seed}.";
        return complaint is null ? new Sampling(samples, number) : null;
    }

    /// <summary>The options that sample so.</summary>
    /// <param name="progress">Is told how far the sampling has come; null for nobody.</param>
    public SpreadOptions Options(IProgress<SpreadProgress>? progress) => new() { Samples = Samples, Seed = Seed, Progress = progress };
}
