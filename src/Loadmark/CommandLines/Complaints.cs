using Loadmark.Answers;
using Loadmark.Core.Rigs;
using Loadmark.Processes;

namespace Loadmark.CommandLines;

/// <summary>Says what is wrong with what a command was given.</summary>
internal sealed class Complaints(ProcessContext process)
{
    /// <summary>Tells what kept files from being read.</summary>
    public void Tell(IEnumerable<CheckAnswer> files)
    {
        foreach (var fault in files.SelectMany(static file => file.Errors))
            process.Error.WriteLine(TerminalText.Neutral(fault.ToString()));
    }

    /// <summary>Answers that files cannot be read.</summary>
    /// <param name="files">The files; those without errors are left out.</param>
    /// <param name="json">Whether the answer is to be JSON too.</param>
    /// <returns>The exit code.</returns>
    public int Unreadable(IEnumerable<CheckAnswer> files, bool json)
    {
        var faulty = files.Where(static file => file.Errors.Count > 0).ToList();
        Tell(faulty);
        if (json)
            CheckJson.Write(process.Output, faulty);
        return ExitCode.Unreadable;
    }

    /// <summary>Says what the user should know besides the answer.</summary>
    public void Warn(string sentence) => process.Error.WriteLine($"loadmark: {TerminalText.Neutral(sentence)}");

    /// <summary>Answers that something typed cannot be used.</summary>
    /// <returns>The exit code.</returns>
    public int Unusable(string complaint)
    {
        process.Error.WriteLine($"loadmark: {TerminalText.Neutral(complaint)}");
        return ExitCode.Unreadable;
    }

    /// <summary>What is wrong with the names of supplies that alone may be used; null when nothing is.</summary>
    public static string? AboutOnly(IEnumerable<string> only, Rig rig, string file) =>
        only.FirstOrDefault(name => !rig.Supplies.Items.Any(supply => supply.Id == name)) is { } stranger
            ? $"--only: there is no supply '{stranger}' in {file}."
            : null;
}
