using System.Globalization;
using Loadmark.CommandLines;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Serving;
using Loadmark.Serving.Logs;
using Loadmark.Workshop.DataFolders;

namespace Loadmark.Commands;

/// <summary><c>loadmark</c> alone: opens the page.</summary>
internal sealed class PageCommand(CommandInput input)
{
    private static readonly OptionSpec Port = new(
        "port", OptionKind.Number, "The page's port; one that is taken moves on to the next. 0 takes any that is free.")
    { Placeholder = "N" };

    private static readonly OptionSpec NoBrowser = new("no-browser", OptionKind.Flag, "Print the page's address and do not open it.");

    private static readonly OptionSpec Log = new(
        "log",
        OptionKind.Text,
        "How the page's log is written, on standard error: for people (default), or an object a line with each request.")
    { Placeholder = "text|json", Needs = "the word text or json" };

    private static readonly OptionSpec LogContent = new(
        "log-content", OptionKind.Flag, "Let messages that may quote a rig into the log; else it holds none of your texts.");

    /// <summary>The options of the program alone.</summary>
    public static IReadOnlyList<OptionSpec> Options { get; } = [Port, NoBrowser, Log, LogContent];

    /// <summary>Serves the page until Ctrl-C.</summary>
    public int Run()
    {
        if (OptionsOf(input, out var complaint) is not { } options)
            return input.Refuse(complaint);
        var stop = input.Process.Interruption();
        try
        {
            var trouble = PageServer.RunAsync(options, input.Process, stop).GetAwaiter().GetResult();
            if (trouble is not null)
                return input.Complaints.Unusable(trouble);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            // Ctrl-C while it was still beginning.
        }

        return ExitCode.Fine;
    }

    /// <summary>Reads how the page is to be served.</summary>
    /// <param name="input">What was typed.</param>
    /// <param name="complaint">What is wrong with it, as a sentence; empty where nothing is.</param>
    /// <returns>How; null where something is wrong.</returns>
    internal static PageOptions? OptionsOf(CommandInput input, out string complaint)
    {
        var (port, form) = (PageOptions.CommonPort, input.Text(Log));
        complaint = "";
        if (input.Text(Port) is { } typed
            && (!int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out port) || port > ushort.MaxValue))
        {
            complaint = $"--port: expected a number from 0 (any that is free) to {ushort.MaxValue}, found '{typed}'.";
            return null;
        }

        if (LogOptions.Read(form, input.Has(LogContent)) is { } log)
            return new PageOptions
            {
                Folder = DataFolder.From(input.Data, input.Process.Environment),
                Port = port,
                OpensBrowser = !input.Has(NoBrowser),
                Log = log,
            };
        complaint = $"--log: expected text or json, found '{form}'.";
        return null;
    }
}
