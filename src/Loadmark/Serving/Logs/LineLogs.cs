namespace Loadmark.Serving.Logs;

/// <summary>
/// Writes the log, a line each. Without leave to tell content, the libraries' lines are told without what is filled into them, and faults
/// without their messages: what this program writes of its own is never content (see RequestLog and its like), what others quote may be.
/// </summary>
/// <param name="output">Where to.</param>
/// <param name="options">How.</param>
/// <param name="clock">Tells when.</param>
internal sealed class LineLogs(TextWriter output, LogOptions options, TimeProvider clock) : ILoggerProvider, ISupportExternalScope
{
    private const string Own = "Loadmark.";
    private const string Template = "{OriginalFormat}";

    private readonly Lock _turn = new();
    private IExternalScopeProvider _scopes = new LoggerExternalScopeProvider();

    /// <inheritdoc/>
    public ILogger CreateLogger(string categoryName) => new Logger(this, categoryName);

    /// <inheritdoc/>
    public void SetScopeProvider(IExternalScopeProvider scopeProvider) => _scopes = scopeProvider;

    /// <inheritdoc/>
    public void Dispose()
    {
        // The output is whose it was.
    }

    private void Write<TState>(
        string source, LogLevel level, EventId number, TState state, Exception? fault, Func<TState, Exception?, string> words)
    {
        var tells = options.WithContent || source.StartsWith(Own, StringComparison.Ordinal);
        var fields = state as IReadOnlyList<KeyValuePair<string, object?>> ?? [];
        var message = tells
            ? words(state, null)
            : fields.FirstOrDefault(static field => field.Key == Template).Value as string ?? "something happened";
        var line = new LogLine(
            clock.GetUtcNow(), level, source, number.Id, message,
            tells ? [.. fields.Where(static field => field.Key is not Template and not "")] : [],
            IdInScope(),
            fault is null ? null : FaultText.Of(fault, options.WithContent));
        var text = LogLineText.Of(line, options.Form);
        lock (_turn)
            output.WriteLine(text);
    }

    /// <summary>The id of the request or page that is being answered; of other scopes, which may hold addresses, nothing is told.</summary>
    private string? IdInScope()
    {
        var found = new string?[1];
        _scopes.ForEachScope(
            static (scope, found) =>
            {
                if (scope is IEnumerable<KeyValuePair<string, object?>> fields)
                    found[0] = fields.FirstOrDefault(static field => field.Key == "id").Value as string ?? found[0];
            },
            found);
        return found[0];
    }

    private sealed class Logger(LineLogs logs, string source) : ILogger
    {
        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => logs._scopes.Push(state);

        public bool IsEnabled(LogLevel logLevel) => logLevel != LogLevel.None;

        public void Log<TState>(
            LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
            logs.Write(source, logLevel, eventId, state, exception, formatter);
    }
}
