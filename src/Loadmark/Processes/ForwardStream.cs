namespace Loadmark.Processes;

/// <summary>A stream that goes forward only: it has no length and no position, and is read or written byte after byte.</summary>
internal abstract class ForwardStream : Stream
{
    /// <inheritdoc/>
    public sealed override bool CanSeek => false;

    /// <inheritdoc/>
    public sealed override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public sealed override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public sealed override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public sealed override void SetLength(long value) => throw new NotSupportedException();
}
