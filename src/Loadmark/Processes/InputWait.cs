using Loadmark.Files;

namespace Loadmark.Processes;

/// <summary>
/// Says what the program waits for while it reads what may take its time: standard input, or a pipe that has a name. At a terminal it
/// says so once and at once, since somebody is about to type there; else every second, as long as it takes.
/// </summary>
internal sealed class InputWait : IDisposable
{
    private readonly WaitNotice? _notice;

    private InputWait(WaitNotice? notice) => _notice = notice;

    /// <summary>Begins to wait for standard input.</summary>
    /// <param name="process">Where to say it.</param>
    /// <param name="what">What is to come: "the end of the rig".</param>
    public static InputWait ForStandardInput(ProcessContext process, string what)
    {
        if (!process.InputIsTerminal)
            return new InputWait(new WaitNotice(process, $"waiting on standard input for {what}"));
        process.Error.WriteLine(
            $"Type here, and end with {(OperatingSystem.IsWindows() ? "Ctrl-Z" : "Ctrl-D")} on a line of its own: waiting for {what}.");
        return new InputWait(null);
    }

    /// <summary>Begins to wait for a file; what is an ordinary one is there at once, and nothing is said of it.</summary>
    /// <param name="process">Where to say it.</param>
    /// <param name="path">The file's path as typed.</param>
    public static InputWait ForFile(ProcessContext process, string path) =>
        new(OrdinaryFile.MayBeAPipe(path) ? new WaitNotice(process, $"waiting for {TerminalText.Neutral(path)}") : null);

    /// <inheritdoc/>
    public void Dispose() => _notice?.Dispose();
}
