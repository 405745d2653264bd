namespace Loadmark.Api.Answering;

/// <summary>What is told of how far a computation has come.</summary>
/// <param name="Elapsed">The time since it was asked for.</param>
/// <param name="Last">The last that it told itself; null before it told anything.</param>
internal sealed record ToldProgress(TimeSpan Elapsed, object? Last);
