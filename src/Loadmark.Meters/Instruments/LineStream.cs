using System.Text;

namespace Loadmark.Meters.Instruments;

/// <summary>Lines over a stream of bytes: they end with a line feed, and a carriage return before it is dropped.</summary>
/// <param name="stream">The stream; it is closed with this.</param>
/// <param name="longest">The bytes that a line may have.</param>
internal sealed class LineStream(Stream stream, int longest) : IAsyncDisposable
{
    private readonly byte[] _buffer = new byte[1024];
    private readonly List<byte> _line = [];
    private int _next;
    private int _end;

    /// <summary>Sends a line.</summary>
    public async Task WriteAsync(string line, CancellationToken cancellation)
    {
        await stream.WriteAsync(Encoding.ASCII.GetBytes(line + "\n"), cancellation).ConfigureAwait(false);
        await stream.FlushAsync(cancellation).ConfigureAwait(false);
    }

    /// <summary>The next line; null where the stream has ended.</summary>
    /// <exception cref="InstrumentException">The line is too long.</exception>
    public async Task<string?> ReadAsync(CancellationToken cancellation)
    {
        _line.Clear();
        while (true)
        {
            if (_next == _end)
            {
                _next = 0;
                _end = await stream.ReadAsync(_buffer, cancellation).ConfigureAwait(false);
                if (_end == 0)
                    return null;
            }

            var character = _buffer[_next++];
            if (character == '\n')
                return Encoding.Latin1.GetString([.. _line]).TrimEnd('\r');
            if (_line.Count == longest)
                throw new InstrumentException($"What it answers has no end within {longest} bytes: is it an instrument that speaks SCPI?");
            _line.Add(character);
        }
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => stream.DisposeAsync();
}
