namespace Loadmark.Simulation.Spreading;

/// <summary>
/// The random numbers of one sample: SplitMix64 (Steele, Lea, Flood, "Fast splittable pseudorandom number generators", 2014).
/// They follow from the seed and the number of the sample alone, so it does not matter which thread computes it.
/// </summary>
internal struct SampleRandom
{
    private const ulong Golden = 0x9E3779B97F4A7C15;
    private const double Step = 1.0 / (1UL << 53);

    private ulong _state;

    /// <summary>Starts at a state, as published.</summary>
    public SampleRandom(ulong state) => _state = state;

    /// <summary>The numbers of a sample.</summary>
    /// <param name="seed">The seed of them all.</param>
    /// <param name="sample">The number of the sample, 0 or more.</param>
    public static SampleRandom Of(ulong seed, int sample)
    {
        // Both are mixed, so that neighbouring seeds and samples do not walk the same states.
        var start = new SampleRandom(seed).Next();
        return new SampleRandom(new SampleRandom(start ^ (ulong)(uint)sample).Next());
    }

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        var mixed = _state += Golden;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return mixed ^ (mixed >> 31);
    }

    /// <summary>The next number from 0 up to and without 1, each as likely as any other.</summary>
    public double NextShare() => (Next() >> 11) * Step;
}
