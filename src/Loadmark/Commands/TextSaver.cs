using Loadmark.Files;
using Loadmark.Hosting;
using Loadmark.Sheets;

namespace Loadmark.Commands;

/// <summary>Saves what a command was asked to write, and says what kept it from it.</summary>
internal sealed class TextSaver(Surroundings around)
{
    /// <summary>Saves a text, whole or not at all. False where it could not be written; that has been said then.</summary>
    public bool TrySave(string path, string text)
    {
        try
        {
            RigFile.Save(path, text);
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            around.Error.WriteLine($"loadmark: {SafeText.Neutral(path)} could not be written: {SafeText.Neutral(fault.Message)}");
            return false;
        }
    }
}
