namespace Loadmark.Api.Monitoring;

/// <summary>Whether the program and the rigs' store are well.</summary>
/// <param name="UptimeSeconds">How long the program has been running, s.</param>
/// <param name="Trouble">What is wrong with the store, in words; null where nothing is.</param>
internal sealed record HealthReport(decimal UptimeSeconds, string? Trouble);
