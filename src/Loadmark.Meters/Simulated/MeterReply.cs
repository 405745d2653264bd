namespace Loadmark.Meters.Simulated;

/// <summary>A header that the simulated meter knows, with what it does.</summary>
/// <param name="Header">The header.</param>
/// <param name="Reply">Takes what stands behind the header, and gives the answer; null where there is none.</param>
internal sealed record MeterReply(Scpi.HeaderPattern Header, Func<string, string?> Reply);
