using Loadmark.Core.Checks;
using Loadmark.Core.OpenQuestions;
using Loadmark.Files.Errors;

namespace Loadmark.Answers;

/// <summary>What came of checking one file.</summary>
/// <param name="File">The path as the user typed it.</param>
/// <param name="Result">What the rules have to say; null when the file could not be read.</param>
/// <param name="Errors">What kept it from being read; empty when <paramref name="Result"/> is there.</param>
internal sealed record CheckAnswer(string File, CheckResult? Result, IReadOnlyList<FileError> Errors)
{
    /// <summary>What is worth asking about the rig, the worst first; empty when there is nothing, or the file could not be read.</summary>
    public IReadOnlyList<OpenQuestion> Questions { get; init; } = [];
}
