using Loadmark.Files;

namespace Loadmark.Sources;

/// <summary>Where the commands get rigs from.</summary>
internal interface IRigSource
{
    /// <summary>Reads one rig. Called from several threads at once.</summary>
    /// <param name="path">The path as the user typed it.</param>
    /// <returns>The rig, or what keeps it from being read; a file that cannot be opened is such a fault too.</returns>
    RigReading Read(string path);
}
