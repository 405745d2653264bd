namespace Loadmark.Storage.Tests;

/// <summary>A stream that comes in pieces, tells of each, and ends or breaks where a test says.</summary>
/// <param name="bytes">What it would give.</param>
/// <param name="after">How many bytes it gives.</param>
/// <param name="onPiece">Is called once a piece has been given, before the next.</param>
/// <param name="broken">What it breaks with after that many; null for a quiet end.</param>
internal sealed class TroubledStream(byte[] bytes, int after, Action onPiece, string? broken = null) : MemoryStream(bytes, 0, after)
{
    private const int Piece = 4096;

    /// <inheritdoc/>
    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        if (Position > 0)
            onPiece();
        if (Position == Length && broken is not null)
            throw new InvalidOperationException(broken);
        cancellationToken.ThrowIfCancellationRequested();
        return await base.ReadAsync(buffer[..Math.Min(buffer.Length, Piece)], cancellationToken);
    }
}
