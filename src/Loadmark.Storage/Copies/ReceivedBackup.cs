using Loadmark.Storage.Disk;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>
/// A backup that comes as a stream, in a file of its own in the store's folder, for the user's eyes only, for as long as it is looked at.
/// </summary>
internal sealed class ReceivedBackup : IDisposable
{
    private const string Stem = "loadmark-received";
    private const int Piece = 64 * 1024;

    /// <summary>Nobody writes any more to one that was not written to for so long: its program was killed.</summary>
    private static readonly TimeSpan Abandoned = TimeSpan.FromHours(1);

    private ReceivedBackup(string path) => Path = path;

    /// <summary>The file's path.</summary>
    public string Path { get; }

    /// <summary>Writes the stream to the file.</summary>
    /// <param name="content">What comes; is read to its end.</param>
    /// <param name="bytes">How many bytes are to come.</param>
    /// <param name="named">What the user calls it; is never used as a path.</param>
    /// <param name="folder">The store's folder.</param>
    /// <param name="progress">Is told how many bytes have come.</param>
    /// <param name="cancellationToken">Gives up; there is no file then.</param>
    /// <exception cref="StorageException">It did not come whole, or cannot be written; there is no file then.</exception>
    /// <exception cref="OperationCanceledException">It was given up.</exception>
    public static async Task<ReceivedBackup> OfAsync(
        Stream content, long bytes, string named, string folder, IProgress<long>? progress, CancellationToken cancellationToken)
    {
        ReceivedBackup? received = null;
        try
        {
            PrivateFile.MakeFolder(folder);
            received = new ReceivedBackup(PrivateFile.MakeNumbered(System.IO.Path.Combine(folder, Stem), CopyWriter.Unfinished));
            await received.FillAsync(content, bytes, named, progress, cancellationToken);
            return received;
        }
        catch (Exception fault) when (fault is not StorageException && MediumFaults.KindOf(fault) is { } kind)
        {
            received?.Dispose();
            throw CopyFaults.WhileReceiving(kind, named, folder, fault);
        }
        catch
        {
            received?.Dispose();
            throw;
        }
    }

    /// <summary>Deletes what programs that were killed meanwhile have left.</summary>
    /// <param name="folder">The store's folder.</param>
    /// <param name="now">The time.</param>
    public static void Sweep(string folder, DateTimeOffset now)
    {
        try
        {
            foreach (var left in new DirectoryInfo(folder).EnumerateFiles($"{Stem}*{CopyWriter.Unfinished}"))
            {
                if (left.LastWriteTimeUtc < now.UtcDateTime - Abandoned)
                    left.Delete();
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // It goes the next time.
        }
    }

    /// <inheritdoc/>
    public void Dispose() => File.Delete(Path);

    private async Task FillAsync(
        Stream content, long bytes, string named, IProgress<long>? progress, CancellationToken cancellationToken)
    {
        await using var file = new FileStream(Path, FileMode.Open, FileAccess.Write, FileShare.Read);
        var buffer = new byte[Piece];
        var left = bytes;
        while (await ReadAsync(content, buffer, named, cancellationToken) is > 0 and var read)
        {
            if ((left -= read) < 0)
                break;
            await file.WriteAsync(buffer.AsMemory(0, read), cancellationToken);
            progress?.Report(bytes - left);
        }

        if (left != 0)
            throw CopyFaults.NotReceived(named, cause: null);
    }

    /// <summary>Whatever is the matter with where it comes from, it is no fault of the disk here.</summary>
    private static async Task<int> ReadAsync(Stream content, Memory<byte> buffer, string named, CancellationToken cancellationToken)
    {
        try
        {
            return await content.ReadAsync(buffer, cancellationToken);
        }
        catch (Exception fault) when (!cancellationToken.IsCancellationRequested)
        {
            throw CopyFaults.NotReceived(named, fault);
        }
    }
}
