namespace Loadmark.Processes;

/// <summary>Stands in for standard input where there is none: reading it fails, where the system would have it wait for ever.</summary>
/// <param name="why">What it says of itself.</param>
internal sealed class ClosedStream(string why) : ForwardStream
{
    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanWrite => false;

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => throw new IOException(why);

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void Flush()
    {
        // Nothing is ever written.
    }
}
