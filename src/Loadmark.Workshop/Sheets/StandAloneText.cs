using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Files.Parsing;

namespace Loadmark.Workshop.Sheets;

/// <summary>The text of a rig file as it can be read anywhere, whatever library it takes gear from.</summary>
public static class StandAloneText
{
    /// <summary>The text with what it takes from the library written into it; to the letter as it is where it takes nothing.</summary>
    /// <param name="text">The text of a rig file.</param>
    /// <param name="rig">The rig as it was read from it.</param>
    /// <param name="library">The library that it was read with; null where there was none.</param>
    public static string Of(string text, Rig rig, IGearLookup? library)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(rig);
        return library is not null && rig != rig.WithoutLibrary() ? RigFileEditor.WriteOut(text, library).Update?.Text ?? text : text;
    }
}
