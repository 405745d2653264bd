using Loadmark.Core.Rigs;
using Loadmark.Files.Editing;

namespace Loadmark.Files;

/// <summary>Changes the text of rig files and leaves comments, order and spacing as they are.</summary>
public static class RigFileEditor
{
    /// <summary>
    /// Replaces the wiring, or adds it where there is none. Nothing outside the value of <c>wired</c> changes; comments
    /// between the old feeds go with them. Works for block YAML, flow YAML and JSON, and keeps the line ends.
    /// </summary>
    /// <param name="text">The text of a rig file that can be read.</param>
    /// <param name="wired">The new wiring, of outlets, leads and loads that the rig has.</param>
    /// <returns>The new text. It reads as the same rig with the new wiring.</returns>
    /// <exception cref="ArgumentException">The text is not a readable rig file.</exception>
    /// <exception cref="InvalidOperationException">
    /// The wiring does not fit the rig, or the text is written in a way that cannot be edited safely.
    /// </exception>
    public static string ReplaceWiring(string text, ValueList<Feed> wired)
    {
        ArgumentNullException.ThrowIfNull(text);
        var before = RigFileReader.Read(text, "rig");
        if (before.Rig is null)
            throw new ArgumentException($"The text is not a readable rig file. {before.Errors[0]}", nameof(text));

        var mark = text.StartsWith('\uFEFF') ? "\uFEFF" : "";
        var edited = mark + WiringEdit.Apply(text[mark.Length..], wired);
        var after = RigFileReader.Read(edited, "rig");
        if (after.Rig is null)
            throw new InvalidOperationException($"The new wiring does not fit this rig. {after.Errors[0].Message}");
        if (after.Rig != before.Rig with { Wired = wired })
            throw new InvalidOperationException("This file is written in a way that cannot be edited without changing more than the wiring; save the rig anew instead.");
        return edited;
    }
}
