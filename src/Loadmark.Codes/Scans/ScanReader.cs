using Loadmark.Codes.Packing;
using Loadmark.Codes.Pictures;

namespace Loadmark.Codes.Scans;

/// <summary>Reads codes from files that somebody scanned or photographed, whatever is in them.</summary>
public static class ScanReader
{
    /// <summary>The largest file that is read, in bytes.</summary>
    public const int MostBytes = 64 * 1024 * 1024;

    /// <summary>Room for what goes down deep in a file that was made to go deeper than any that means something.</summary>
    private const int StackBytes = 64 * 1024 * 1024;

    /// <summary>How long a file is looked at, where nobody says how long.</summary>
    public static TimeSpan CommonPatience { get; } = TimeSpan.FromSeconds(60);

    /// <summary>Whether a file says by its first bytes that it is PDF, PNG, JPEG or WebP; whether it is whole is not looked at.</summary>
    /// <param name="bytes">The file, or its beginning.</param>
    public static bool IsScan(ReadOnlySpan<byte> bytes) => PdfFile.Is(bytes) || PictureFile.Is(bytes);

    /// <summary>Adds the codes of a file to those that were found.</summary>
    /// <param name="bytes">The file: PNG, JPEG or PDF, at most <see cref="MostBytes"/>.</param>
    /// <param name="found">Where they go. Not to be used by others meanwhile.</param>
    /// <param name="patience">How long the file is looked at; null for <see cref="CommonPatience"/>.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>What keeps the file from being read, as the rest of a sentence; null where nothing does, codes or none.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static string? Read(byte[] bytes, GatheredCodes found, TimeSpan? patience = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(found);
        if (bytes.Length == 0)
            return "the file is empty.";
        if (bytes.Length > MostBytes)
            return TooLarge;
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        limit.CancelAfter(patience ?? CommonPatience);
        var stop = limit.Token;

        // On a thread of its own, with codes of its own: a library that goes round in circles is left behind with what it finds.
        var own = found.Copy();
        var work = new TaskCompletionSource<string?>(TaskCreationOptions.RunContinuationsAsynchronously);
        var thread = new Thread(
            () =>
            {
                try
                {
                    work.SetResult(Look(bytes, own, stop));
                }
                catch (Exception fault)
                {
                    work.SetException(fault);
                }
            },
            StackBytes)
        { IsBackground = true, Name = "scan" };
        thread.Start();
        try
        {
            var complaint = work.Task.WaitAsync(stop).GetAwaiter().GetResult();
            found.Take(own);
            return complaint;
        }
        catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
        {
            return "it takes too long to look through. Cut it to the page with the codes.";
        }
    }

    /// <summary>What is wrong with a file that is too large.</summary>
    public static string TooLarge => $"it is over {MostBytes / (1024 * 1024)} MiB. Cut it to the page with the codes.";

    private static string? Look(byte[] bytes, GatheredCodes found, CancellationToken stop)
    {
        var isPdf = PdfFile.Is(bytes);
        try
        {
            if (isPdf)
                return PdfFile.Find(bytes, found, stop);
            if (PictureFile.Read(bytes, out var picture) is { } complaint)
                return complaint;
            PictureCodes.Find(picture!, found, stop);
            return null;
        }
        catch (OutOfMemoryException)
        {
            return "there is no memory for what is in it. Cut it to the page with the codes.";
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            // The libraries meet what is damaged, protected, or made to do harm, with whatever exception comes of it.
            return isPdf ? PdfFile.Damaged : "the picture is damaged.";
        }
    }
}
