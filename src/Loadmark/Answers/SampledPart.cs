namespace Loadmark.Answers;

/// <summary>A load or an outlet among samples.</summary>
/// <typeparam name="T">Which of the two.</typeparam>
/// <param name="Part">The load or the outlet.</param>
/// <param name="IsStartUp">Whether the samples are of the first seconds; else they are of the steady state.</param>
internal sealed record SampledPart<T>(T Part, bool IsStartUp);
