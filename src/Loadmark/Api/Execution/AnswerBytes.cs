namespace Loadmark.Api.Execution;

/// <summary>Collects what the commands' own writers write.</summary>
internal static class AnswerBytes
{
    /// <summary>What is written.</summary>
    /// <param name="write">Writes it.</param>
    public static ReadOnlyMemory<byte> Of(Action<Stream> write)
    {
        using var output = new MemoryStream();
        write(output);
        return output.ToArray();
    }
}
