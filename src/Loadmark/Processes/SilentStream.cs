namespace Loadmark.Processes;

/// <summary>Standard error, whose failures are passed over: where it is full or gone, nobody is left who could be told.</summary>
/// <param name="inner">The system's stream.</param>
internal sealed class SilentStream(Stream inner) : ForwardStream
{
    /// <inheritdoc/>
    public override bool CanRead => false;

    /// <inheritdoc/>
    public override bool CanWrite => true;

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count)
    {
        try
        {
            inner.Write(buffer, offset, count);
        }
        catch (Exception fault) when (fault is IOException or ArgumentException or UnauthorizedAccessException or NotSupportedException)
        {
            // What it would have said is lost; what the program answers and its exit code are not.
        }
    }

    /// <inheritdoc/>
    public override void Flush()
    {
        // The system's stream keeps nothing back.
    }
}
