using System.Diagnostics;
using System.Net.Sockets;
using System.Runtime.InteropServices;
using Loadmark.Files.Library;
using Loadmark.Processes;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Web.Guarding;
using Loadmark.Workshop.DataFolders;
using Microsoft.AspNetCore.Connections;

namespace Loadmark.Serving;

/// <summary>Serves the page to this machine's own browser.</summary>
internal static class PageServer
{
    /// <summary>How many ports are tried, beginning with the one that was asked for.</summary>
    private const int PortsTried = 20;

    /// <summary>How often it is looked whether a new day has begun.</summary>
    private static readonly TimeSpan BetweenCopies = TimeSpan.FromMinutes(10);

    /// <summary>Serves until a wish to come to an end.</summary>
    /// <param name="options">Where the rigs are, and how it is reached.</param>
    /// <param name="process">Streams.</param>
    /// <param name="stop">The wish to come to an end.</param>
    /// <returns>Why it could not begin, in a sentence or two; null when it has come to its end.</returns>
    public static async Task<string?> RunAsync(PageOptions options, ProcessContext process, CancellationToken stop)
    {
        using var store = new Store(options.Folder, process.Time, RigMentions.Of);
        var opening = await store.OpenAsync(stop);
        if (opening.Trouble is { } trouble)
            await process.Error.WriteLineAsync($"loadmark: {TerminalText.Neutral(trouble)}");
        else if (opening.Remark is { } remark)
            await process.Error.WriteLineAsync($"loadmark: {TerminalText.Neutral(remark)}");
        else if (opening.WasCreated)
            await DemoRigs.AddAsync(store.Rigs, stop);

        var settings = new HostSettings { Error = process.Error, Clock = process.Time, Log = options.Log };
        await using var app = await StartAsync(options, settings, store, opening, stop);
        if (app is null)
            return $"no port from {options.Port} to {LastPort(options)} is free. Name another with --port, or 0 for any that is free.";
        var address = app.Urls.First();

        // Where everybody may write, somebody could put another page in the place of the one that opens in the user's browser.
        using var files = opening.Fault == StoreFault.OpenToOthers
            ? null
            : await WriteFilesAsync(options.Folder, address, settings.Key, process.Error);
        var entrance = settings.Key.EntranceAt(address);
        await using (var output = new StreamWriter(process.Output, process.OutputEncoding, leaveOpen: true))
        {
            var header = files is null ? "" : $" Other programs find its key in {TerminalText.Neutral(files.Header)}";
            var kept = TerminalText.Neutral(options.Folder);
            await output.WriteLineAsync($"Loadmark is at {entrance}  (Ctrl-C ends it; rigs are kept in {kept})");
            await output.WriteLineAsync($"Whoever has this address can see and change them.{header}");
        }

        if (options.OpensBrowser && files is not null)
            Open(files.Page);

        // A terminal that is closed ends the program as Ctrl-C does, so that the files with the key go with it.
        using var closing = CancellationTokenSource.CreateLinkedTokenSource(stop);
        using var hangUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, signal =>
        {
            signal.Cancel = true;
            closing.Cancel();
        });
        var keeping = KeepDailyAsync(store, process, closing.Token);
        await app.WaitForShutdownAsync(closing.Token);
        await closing.CancelAsync();
        await keeping;
        return null;
    }

    /// <summary>
    /// Makes the copy of each day of use, beside the page's answers: one when it starts, and one on each day on which it runs on.
    /// </summary>
    private static async Task KeepDailyAsync(Store store, ProcessContext process, CancellationToken stop)
    {
        string? told = null;
        try
        {
            while (!stop.IsCancellationRequested)
            {
                if (store.IsOpen && await store.Copies.KeepTodayAsync() is { } trouble && trouble != told)
                    await process.Error.WriteLineAsync($"loadmark: {told = trouble}");
                await Task.Delay(BetweenCopies, process.Time, stop);
            }
        }
        catch (OperationCanceledException)
        {
            // The page has come to its end.
        }
    }

    /// <summary>
    /// Writes the key for other programs and for the browser; where that cannot be, says so: the address that is printed still lets in.
    /// </summary>
    private static async Task<EntranceFiles?> WriteFilesAsync(string folder, string address, EntryKey key, TextWriter error)
    {
        try
        {
            return EntranceFiles.Write(folder, address, key);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            await error.WriteLineAsync(
                $"loadmark: the key cannot be written into {TerminalText.Neutral(folder)}, so no browser is opened; "
                + "open the address yourself");
            return null;
        }
    }

    private static int LastPort(PageOptions options) => Math.Min(options.Port + PortsTried, ushort.MaxValue);

    /// <summary>Starts on the first port that is free; null where none of those that are tried is.</summary>
    private static async Task<WebApplication?> StartAsync(
        PageOptions options, HostSettings settings, Store store, StoreOpening opening, CancellationToken stop)
    {
        for (var port = options.Port; port <= LastPort(options); port++)
        {
            var app = ProgramHost.Build(options.Port == 0 ? 0 : port, store, opening, settings);
            try
            {
                await app.StartAsync(stop);
                return app;
            }
            catch (IOException fault) when (fault.InnerException is AddressInUseException)
            {
                await app.DisposeAsync();
            }
            catch (SocketException fault) when (fault.SocketErrorCode == SocketError.AccessDenied)
            {
                await app.DisposeAsync();
            }
        }

        return null;
    }

    /// <summary>Opens a file in the user's browser, where there is one; the address is printed in any case.</summary>
    private static void Open(string file)
    {
        try
        {
            using var browser = Process.Start(new ProcessStartInfo(file) { UseShellExecute = true });
        }
        catch (Exception fault) when (
            fault is InvalidOperationException or System.ComponentModel.Win32Exception or PlatformNotSupportedException)
        {
            // No desktop here: whoever reads the line above opens it.
        }
    }
}
