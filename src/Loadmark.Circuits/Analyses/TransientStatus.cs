namespace Loadmark.Circuits.Analyses;

/// <summary>How a transient ended.</summary>
public enum TransientStatus
{
    /// <summary>The analysis came to the end of its time.</summary>
    Completed,

    /// <summary>There is no steady state to start from.</summary>
    NoStart,

    /// <summary>The equations could not be solved even with the shortest step.</summary>
    NotFound,

    /// <summary>States change over and over at one instant, such as a load without a capacitor that drops out and starts again.</summary>
    Chatters,

    /// <summary>The most work that it was given did not suffice to come to the end of its time.</summary>
    Spent,

    /// <summary>What the network does repeats, and one repetition was computed to its end (see <see cref="TransientOptions"/>).</summary>
    Repeats,
}
