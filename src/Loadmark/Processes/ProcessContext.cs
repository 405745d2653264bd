using System.Text;
using Loadmark.Files;

namespace Loadmark.Processes;

/// <summary>What a command sees of the process around it: its streams and what the terminal can show.</summary>
/// <remarks>A test hands in its own; nothing below this reads the console or the environment.</remarks>
internal sealed record ProcessContext
{
    /// <summary>The width of a page where nobody says how wide it is, in character cells.</summary>
    public const int CommonWidth = 80;

    private const int Utf8CodePage = 65001;

    /// <summary>Where results go.</summary>
    public required Stream Output { get; init; }

    /// <summary>The encoding of results meant for people. JSON is always UTF-8.</summary>
    public Encoding OutputEncoding { get; init; } = PlainUtf8;

    /// <summary>Where errors and hints go.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Standard input, opened only when it is asked for.</summary>
    public required Func<Stream> Input { get; init; }

    /// <summary>The encoding of what is typed line by line. A rig is UTF-8 wherever it comes from.</summary>
    public Encoding InputEncoding { get; init; } = PlainUtf8;

    /// <summary>Whether somebody types at a terminal what is read from standard input.</summary>
    public bool InputIsTerminal { get; init; }

    /// <summary>How long a pipe that has a name is waited for, until somebody writes to it.</summary>
    public TimeSpan Patience { get; init; } = RigFile.CommonPatience;

    /// <summary>What in the surroundings keeps the program from answering at all; null where nothing does.</summary>
    public SurroundingTrouble? Trouble { get; init; }

    /// <summary>Begins to listen for a wish to come to an end; a command that asks for it answers with what it has by then.</summary>
    public Func<CancellationToken> Interruption { get; init; } = static () => CancellationToken.None;

    /// <summary>Reads a variable of the environment; null where it is not set.</summary>
    public Func<string, string?> Environment { get; init; } = static _ => null;

    /// <summary>The clock that commands and the server go by.</summary>
    public TimeProvider Time { get; init; } = TimeProvider.System;

    /// <summary>How wide the page is, in character cells.</summary>
    public int Width { get; init; } = CommonWidth;

    /// <summary>Whether the output takes colour and bold.</summary>
    public bool Colour { get; init; }

    /// <summary>Whether the details of a program fault are to be shown.</summary>
    public bool Debug { get; init; }

    /// <summary>Whether the output can show characters beyond ASCII.</summary>
    public bool Unicode => OutputEncoding.CodePage is Utf8CodePage or 1200 or 1201 or 12000 or 12001; // UTF-8, UTF-16, UTF-32

    private static UTF8Encoding PlainUtf8 { get; } = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>The surroundings of this process.</summary>
    /// <param name="interrupts">What Ctrl-C does.</param>
    public static ProcessContext OfProcess(Interrupts interrupts)
    {
        var redirected = Console.IsOutputRedirected;
        var encoding = Console.OutputEncoding;
        var wait = System.Environment.GetEnvironmentVariable(PipePatience.Variable);
        return new ProcessContext
        {
            Output = StandardStreams.Output(),
            OutputEncoding = encoding.CodePage == Utf8CodePage ? PlainUtf8 : encoding,
            Error = StandardStreams.Error(encoding.CodePage == Utf8CodePage ? PlainUtf8 : encoding),
            Input = StandardStreams.Input,
            InputEncoding = Console.InputEncoding,
            InputIsTerminal = !Console.IsInputRedirected,
            Patience = PipePatience.From(wait, out var complaint),
            Trouble = StandardStreams.OutputWasClosed ? new SurroundingTrouble(StandardStreams.OutputIsClosed, ExitCode.Fault)
                : complaint is not null ? new SurroundingTrouble(complaint, ExitCode.Unreadable)
                : null,
            Interruption = interrupts.Listen,
            Environment = System.Environment.GetEnvironmentVariable,
            Width = WidthFrom(System.Environment.GetEnvironmentVariable("COLUMNS"), redirected ? 0 : TerminalWidth()),
            Colour = TakesColour(redirected, System.Environment.GetEnvironmentVariable),
            Debug = System.Environment.GetEnvironmentVariable("LOADMARK_DEBUG") == "1",
        };
    }

    /// <summary>The page's width: the terminal's own, else what COLUMNS says, else the common one; within reason.</summary>
    /// <param name="columns">The environment's COLUMNS; null when not set.</param>
    /// <param name="terminal">The terminal's width in cells; 0 when there is none.</param>
    internal static int WidthFrom(string? columns, int terminal)
    {
        const int narrowest = 50;
        const int widest = 120; // longer lines are hard to read
        var width = terminal;
        if (width <= 0 && (!int.TryParse(columns, out width) || width <= 0))
            width = CommonWidth;
        return Math.Clamp(width, narrowest, widest);
    }

    /// <summary>Whether to write colour: only to a terminal that is able to, and not where NO_COLOR is set.</summary>
    internal static bool TakesColour(bool redirected, Func<string, string?> environment) =>
        !redirected && string.IsNullOrEmpty(environment("NO_COLOR")) && environment("TERM") != "dumb";

    private static int TerminalWidth()
    {
        try
        {
            return Console.WindowWidth;
        }
        catch (IOException)
        {
            return 0;
        }
    }
}
