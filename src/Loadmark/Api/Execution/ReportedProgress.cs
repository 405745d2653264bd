namespace Loadmark.Api.Execution;

/// <summary>What is told of how far a computation has come.</summary>
/// <param name="Elapsed">The time since it was asked for.</param>
/// <param name="Last">The last that it told itself; null before it told anything.</param>
internal sealed record ReportedProgress(TimeSpan Elapsed, object? Last);
