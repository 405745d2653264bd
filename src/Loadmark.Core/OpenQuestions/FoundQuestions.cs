using Loadmark.Core.Checks;

namespace Loadmark.Core.OpenQuestions;

/// <summary>The questions that are worth asking about a rig, as far as they were sought.</summary>
/// <param name="Questions">The questions, those first whose answer could lead to the worst.</param>
/// <param name="LeftOut">How many possible questions were not tried to the end, 0 or more.</param>
/// <param name="Steps">How many things were judged in all, by the rigs that were tried: loads, outlets and feeds.</param>
public sealed record FoundQuestions(IReadOnlyList<OpenQuestion> Questions, int LeftOut, long Steps)
{
    /// <summary>A check that also says what was not sought to the end.</summary>
    /// <param name="check">The check of the same rig.</param>
    public CheckResult Tell(CheckResult check)
    {
        ArgumentNullException.ThrowIfNull(check);
        if (LeftOut == 0)
            return check;
        var subject = check.Rig;
        return check.With([], [new Untold(
            default,
            [subject],
            $"What is worth asking was not sought to the end: {LeftOut} possible {Phrases.Verb(LeftOut, "question", "questions")} "
            + $"of a rig this large {Phrases.Verb(LeftOut, "was", "were")} not tried.")]);
    }
}
