namespace Loadmark.Serving.Logs;

/// <summary>What one line of the log says.</summary>
/// <param name="Time">When (UTC).</param>
/// <param name="Level">How bad it is.</param>
/// <param name="Source">Who says it.</param>
/// <param name="Number">The number of what happened, by which programs tell it; 0 for none.</param>
/// <param name="Message">What happened.</param>
/// <param name="Fields">The figures and words of the message, by their names.</param>
/// <param name="Id">The id of the request or page; null where it belongs to none.</param>
/// <param name="Fault">Where the program stopped; null where it did not.</param>
internal sealed record LogLine(
    DateTimeOffset Time,
    LogLevel Level,
    string Source,
    int Number,
    string Message,
    IReadOnlyList<KeyValuePair<string, object?>> Fields,
    string? Id,
    string? Fault);
