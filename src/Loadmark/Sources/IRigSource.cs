using Loadmark.Files;

namespace Loadmark.Sources;

/// <summary>Where the commands get rigs from.</summary>
internal interface IRigSource
{
    /// <summary>The gear that rig files take from the library; null where there is no library.</summary>
    IGearLookup? Library => null;

    /// <summary>Reads one rig. Called from several threads at once.</summary>
    /// <param name="path">The path as the user typed it.</param>
    /// <returns>The rig, or what keeps it from being read; a file that cannot be opened is such a fault too.</returns>
    RigReading Read(string path);

    /// <summary>The same source with the library that is kept in a folder.</summary>
    /// <param name="data">The folder as typed; null where none was.</param>
    IRigSource KeptIn(string? data) => this;
}
