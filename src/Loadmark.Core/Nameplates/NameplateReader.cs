namespace Loadmark.Core.Nameplates;

/// <summary>Reads the text of nameplates.</summary>
public static class NameplateReader
{
    /// <summary>Reads a nameplate. Never throws on any text.</summary>
    /// <param name="text">The label's text, as printed or typed.</param>
    /// <returns>What was read and what was not.</returns>
    public static Nameplate Read(string text) => new(text);
}
