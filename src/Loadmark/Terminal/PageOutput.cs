using System.Text;
using Spectre.Console;

namespace Loadmark.Terminal;

/// <summary>The console library's view of where a page goes.</summary>
internal sealed class PageOutput(TextWriter writer, int width, bool isTerminal) : IAnsiConsoleOutput
{
    /// <inheritdoc/>
    public TextWriter Writer => writer;

    /// <inheritdoc/>
    public bool IsTerminal => isTerminal;

    /// <inheritdoc/>
    public int Width => width;

    /// <inheritdoc/>
    public int Height => 24;

    /// <inheritdoc/>
    public void SetEncoding(Encoding encoding)
    {
        // The writer has the encoding that was asked for; the process' console is left alone.
    }
}
