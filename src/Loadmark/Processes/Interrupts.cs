using System.Runtime.InteropServices;

namespace Loadmark.Processes;

/// <summary>
/// What Ctrl-C does: it ends the program, unless a command listens; then the first one asks the command to come to an end
/// with what it has, and the next one ends the program.
/// </summary>
internal sealed class Interrupts : IDisposable
{
    private readonly CancellationTokenSource _asked = new();
    private readonly PosixSignalRegistration _registration;
    private volatile bool _isListening;

    /// <summary>Begins to watch.</summary>
    public Interrupts() => _registration = PosixSignalRegistration.Create(PosixSignal.SIGINT, Handle);

    /// <summary>From now on the first Ctrl-C cancels this.</summary>
    public CancellationToken Listen()
    {
        _isListening = true;
        return _asked.Token;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _registration.Dispose();
        _asked.Dispose();
    }

    private void Handle(PosixSignalContext signal)
    {
        if (!_isListening || _asked.IsCancellationRequested)
            Environment.Exit(ExitCode.Interrupted);
        signal.Cancel = true;
        _asked.Cancel();
    }
}
