namespace Loadmark.Workshop.Accepting;

/// <summary>Why a reading that looks right or wrong proves nothing: what the meter may be off.</summary>
internal static class MeterMeaning
{
    /// <summary>Why it is not sure.</summary>
    /// <param name="isUnknown">
    /// Whether the meter's accuracy is not known; else the reading is nearer to a limit than the meter may be off.
    /// </param>
    /// <param name="range">What the meter is set to.</param>
    public static string Of(bool isUnknown, string range) => isUnknown
        ? $"How far the meter may be off in {range} is not known, so the reading proves nothing."
        : "It is nearer to the limit than the meter may be off.";

    /// <summary>What to do where the accuracy is not known.</summary>
    /// <param name="key">Where it is typed.</param>
    public static string NextForAccuracy(string key) => $"Type it as the meter's maker prints it, as in \"{key}: 0.5 % + 2 digits\".";
}
