using System.Text;

namespace Loadmark.Tests;

/// <summary>Standard output that can be read line by line while the program still runs.</summary>
internal sealed class LineOutput : MemoryStream
{
    private readonly Lock _turn = new();

    public override void Write(byte[] buffer, int offset, int count)
    {
        lock (_turn)
            base.Write(buffer, offset, count);
    }

    public override void Write(ReadOnlySpan<byte> buffer) => Write(buffer.ToArray(), 0, buffer.Length);

    public override ValueTask WriteAsync(ReadOnlyMemory<byte> buffer, CancellationToken cancellationToken = default)
    {
        Write(buffer.Span);
        return ValueTask.CompletedTask;
    }

    /// <summary>Waits for a line that begins so.</summary>
    public async Task<string> LineAsync(string begin, CancellationToken cancellation)
    {
        while (true)
        {
            string text;
            lock (_turn)
                text = Encoding.UTF8.GetString(ToArray());
            if (text.Split('\n').SkipLast(1).FirstOrDefault(line => line.StartsWith(begin, StringComparison.Ordinal)) is { } line)
                return line;
            await Task.Delay(10, cancellation);
        }
    }
}
