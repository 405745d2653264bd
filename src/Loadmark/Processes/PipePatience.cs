using System.Globalization;
using Loadmark.Files;

namespace Loadmark.Processes;

/// <summary>How long the program waits until somebody writes to a pipe that it is to read.</summary>
internal static class PipePatience
{
    /// <summary>The variable of the environment that says it, in whole seconds.</summary>
    public const string Variable = "LOADMARK_WAIT";

    private const int Most = 86_400;

    /// <summary>Reads it.</summary>
    /// <param name="typed">The variable; null or empty where it is not set.</param>
    /// <param name="complaint">What is wrong with it, as a sentence; null where nothing is.</param>
    public static TimeSpan From(string? typed, out string? complaint)
    {
        complaint = null;
        if (string.IsNullOrEmpty(typed))
            return RigFile.CommonPatience;
        if (int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var seconds) && seconds <= Most)
            return TimeSpan.FromSeconds(seconds);
        complaint = $"{Variable}: expected whole seconds from 0 to {Most}, found '{typed}'";
        return RigFile.CommonPatience;
    }
}
