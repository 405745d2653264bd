namespace Loadmark.Workshop.Asking;

/// <summary>What is often asked next, with its answer.</summary>
/// <param name="Question">The question, in plain words.</param>
/// <param name="Answer">The answer, in a sentence or two.</param>
public sealed record FollowUp(string Question, string Answer);
