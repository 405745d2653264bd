namespace Loadmark.Processes;

/// <summary>
/// A stream of the process whose failures are of one kind: <see cref="UnwrittenAnswerException"/> of writing, <see cref="IOException"/> of
/// reading. The system's stream has others, where what it was given is open the wrong way round, for instance.
/// </summary>
/// <param name="inner">The system's stream.</param>
internal sealed class EdgeStream(Stream inner) : ForwardStream
{
    /// <inheritdoc/>
    public override bool CanRead => inner.CanRead;

    /// <inheritdoc/>
    public override bool CanWrite => inner.CanWrite;

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count)
    {
        try
        {
            return inner.Read(buffer, offset, count);
        }
        catch (Exception fault) when (IsOfSystem(fault))
        {
            throw new IOException(Words(fault), fault);
        }
    }

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count)
    {
        try
        {
            inner.Write(buffer, offset, count);
        }
        catch (Exception fault) when (IsOfSystem(fault))
        {
            throw new UnwrittenAnswerException(Words(fault), fault);
        }
    }

    /// <inheritdoc/>
    public override void Flush() => inner.Flush();

    /// <summary>The console library says of a stream that is open the wrong way round that an argument is wrong.</summary>
    private static bool IsOfSystem(Exception fault) =>
        fault is IOException or ArgumentException or UnauthorizedAccessException or NotSupportedException;

    private static string Words(Exception fault) => fault is IOException ? fault.Message : "it is not open for that";
}
