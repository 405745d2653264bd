using System.Text;

namespace Loadmark.Processes;

/// <summary>
/// The three streams that the process was given, each as something that fails in a sentence. One that was closed before the program began
/// is never used: the runtime has put something of its own in its place by then, a pipe that nobody ever writes to or reads.
/// </summary>
internal static class StandardStreams
{
    /// <summary>What a closed standard input says when it is read.</summary>
    public const string InputIsClosed = "it is closed; give it a file, a pipe or /dev/null";

    /// <summary>What a closed standard output says.</summary>
    public const string OutputIsClosed = "standard output is closed. Redirect it to /dev/null where the answer is not wanted";

    /// <summary>The mark of what is not handed on to a new program, in the octal flags that Linux tells of an open file.</summary>
    private const int NotHandedOn = 0x80000;

    /// <summary>Standard input; reading it fails with an <see cref="IOException"/>, and with nothing else.</summary>
    public static Stream Input() => WasClosed(0) ? new ClosedStream(InputIsClosed) : new EdgeStream(Console.OpenStandardInput());

    /// <summary>
    /// Standard output; writing it fails with an <see cref="UnwrittenAnswerException"/>, and with nothing else. A reader that has left
    /// is no failure: who stops reading has what they wanted.
    /// </summary>
    public static Stream Output() => new EdgeStream(Console.OpenStandardOutput());

    /// <summary>Whether standard output was closed before the program began.</summary>
    public static bool OutputWasClosed => WasClosed(1);

    /// <summary>Standard error, which never fails: nobody is left who could be told. The exit code says it still.</summary>
    /// <param name="encoding">The encoding, without a byte order mark.</param>
    public static TextWriter Error(Encoding encoding) => WasClosed(2)
        ? TextWriter.Null
        : TextWriter.Synchronized(
            new StreamWriter(new SilentStream(Console.OpenStandardError()), encoding, bufferSize: 256) { AutoFlush = true });

    /// <summary>
    /// Whether a stream was closed when the program began. What a program is given was handed on to it, so a stream with the mark of one
    /// that is not has been opened since. Told on Linux only; elsewhere false.
    /// </summary>
    /// <param name="number">The stream's number: 0, 1 or 2.</param>
    private static bool WasClosed(int number)
    {
        if (!OperatingSystem.IsLinux())
            return false;
        try
        {
            foreach (var line in File.ReadLines($"/proc/self/fdinfo/{number}"))
            {
                if (line.StartsWith("flags:", StringComparison.Ordinal))
                    return (Convert.ToInt32(line["flags:".Length..].Trim(), 8) & NotHandedOn) != 0;
            }
        }
        catch (FileNotFoundException)
        {
            // Nothing has taken its place; or there is no /proc, and it cannot be told.
            return Directory.Exists("/proc/self/fdinfo");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or FormatException or OverflowException)
        {
            // It cannot be told.
        }

        return false;
    }
}
