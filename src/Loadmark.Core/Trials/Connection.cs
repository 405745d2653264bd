namespace Loadmark.Core.Trials;

/// <summary>A load tried on an outlet.</summary>
/// <param name="Load">The load's tag.</param>
/// <param name="Best">The best way found to connect it, by the rules; where there is a refusal, what it would come to.</param>
/// <param name="Refusal">Why it must not be connected so, as a sentence; null when it may.</param>
/// <param name="Remark">What speaks against it though it may (hum, little to spare); null when nothing does.</param>
/// <param name="IsThere">Whether the outlet feeds the load already.</param>
public sealed record Connection(string Load, Trial Best, string? Refusal, string? Remark, bool IsThere);
