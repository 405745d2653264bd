using Loadmark.Files;
using Loadmark.Files.Parsing;

namespace Loadmark.Sources;

/// <summary>Where the commands get rigs from.</summary>
internal interface IRigSource
{
    /// <summary>The gear that rig files take from the library; null where there is no library.</summary>
    IGearLookup? Library => null;

    /// <summary>Reads one rig. Called from several threads at once.</summary>
    /// <param name="path">The path as the user typed it; <see cref="StandardInput.Mark"/> for standard input.</param>
    /// <returns>The rig, or what keeps it from being read; a file that cannot be opened is such a fault too.</returns>
    RigFileResult Read(string path) => ReadWithText(path, Library).Reading;

    /// <summary>Reads one rig and gives its text too, to the letter.</summary>
    /// <param name="path">The path as the user typed it; <see cref="StandardInput.Mark"/> for standard input.</param>
    /// <param name="library">The gear that it may take from the library; null where there is no library.</param>
    /// <returns>The rig, or what keeps it from being read; and its text, null when there is none.</returns>
    (RigFileResult Reading, string? Text) ReadWithText(string path, IGearLookup? library);

    /// <summary>The same source with the library that is kept in a folder.</summary>
    /// <param name="data">The folder as typed; null where none was.</param>
    IRigSource KeptIn(string? data) => this;
}
