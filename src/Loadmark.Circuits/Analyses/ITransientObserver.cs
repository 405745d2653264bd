using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Analyses;

/// <summary>Watches a transient as it is computed. Nothing is stored unless an observer stores it.</summary>
public interface ITransientObserver
{
    /// <summary>A point was reached. At a jump there are two at the same time: before and after it.</summary>
    /// <param name="seconds">Time, s.</param>
    /// <param name="network">The network at that time; read it now, it goes on.</param>
    void OnPoint(double seconds, Network network);

    /// <summary>A device has changed its state.</summary>
    /// <param name="change">What changed, and when.</param>
    void OnEvent(in TransientEvent change);

    /// <summary>
    /// What the network does repeats from here on. One more repetition is computed, and the run ends; nothing is done unless an observer
    /// does it.
    /// </summary>
    /// <param name="seconds">Time, s.</param>
    /// <param name="repetition">The repetition, over 0 s: one round, or several that are alike.</param>
    /// <param name="rounds">How many rounds it is, 1 or more.</param>
    void OnRepeat(double seconds, double repetition, int rounds)
    {
    }
}
