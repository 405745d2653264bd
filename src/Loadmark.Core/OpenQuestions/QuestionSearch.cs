using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.OpenQuestions;

/// <summary>
/// Finds what is worth asking about a wired rig: what is not known, or was taken for granted, and whose answer changes what the rules say.
/// That is found by trying: each answer is put into the rig and the rules on nameplates judge it.
/// </summary>
public static class QuestionSearch
{
    /// <summary>The questions, those first whose answer could lead to the worst; empty where nothing is plugged in.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="cancellation">Stops it; what was found so far is returned.</param>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    public static IReadOnlyList<OpenQuestion> Of(Rig rig, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var drafts = Drafts(rig);
        var found = new List<OpenQuestion>();
        foreach (var draft in drafts)
        {
            if (cancellation.IsCancellationRequested)
                break;

            // What is unknown elsewhere can hide what an answer changes: it is tried with the usual answers to all else, then as the rig stands.
            var usual = drafts.Where(other => other != draft).Aggregate(rig, static (so, other) => Usual(other, so));
            if ((Try(draft, usual) ?? Try(draft, rig)) is { } question && TakesAnswers(question, rig))
                found.Add(question);
        }

        return [.. found.OrderByDescending(static question => question.Worst).ThenBy(static question => question.Topic)];
    }

    private static List<QuestionDraft> Drafts(Rig rig)
    {
        if (rig.Wired is not { Count: > 0 })
            return [];
        var wired = WiredRig.Of(rig);
        return [.. LoadDrafts.Of(wired), .. SupplyDrafts.Of(wired), .. PlugDrafts.Of(wired)];
    }

    /// <summary>The rig with the usual answer to a question.</summary>
    private static Rig Usual(QuestionDraft draft, Rig rig) => draft.Whole.Answers is [var first, ..] ? first.Apply(rig) : rig;

    /// <summary>The question with what its answers lead to; null where they all lead to the same.</summary>
    private static OpenQuestion? Try(QuestionDraft draft, Rig rig)
    {
        var question = Judged(draft.Whole, rig);
        if (question is null || !draft.IsOfEach || draft.Subjects.Count == 1)
            return question;

        // Who is asked about many things is asked only about those of which the answer matters.
        var matter = draft.Subjects.Items.Where(subject => Judged(draft.Build([subject]), rig) is not null).ToList();
        return matter.Count == 0 || matter.Count == draft.Subjects.Count ? question : Judged(draft.Build([.. matter]), rig);
    }

    private static OpenQuestion? Judged(OpenQuestion question, Rig rig)
    {
        var tried = new List<(PossibleAnswer Answer, Dictionary<string, Severity> Said)>();
        foreach (var answer in question.Answers)
        {
            if (Judge(answer.Apply(rig)) is { } said)
                tried.Add((answer, said));
        }

        if (tried.Count < 2 || tried.TrueForAll(one => one.Said.Keys.ToHashSet(StringComparer.Ordinal).SetEquals(tried[0].Said.Keys)))
            return null;

        var common = tried.Select(static one => one.Said.Keys.AsEnumerable()).Aggregate(static (all, one) => all.Intersect(one, StringComparer.Ordinal))
            .ToHashSet(StringComparer.Ordinal);
        return question with
        {
            TriedOn = rig,
            Answers =
            [
                .. tried.Select(one => one.Answer with
                {
                    LeadsTo = one.Said.Where(said => !common.Contains(said.Key)).Select(static said => said.Value).DefaultIfEmpty(Severity.Good).Max(),
                }),
            ],
        };
    }

    /// <summary>The findings worse than a note; null where the answer makes no rig, such as one set to a voltage that its outlet does not give.</summary>
    private static Dictionary<string, Severity>? Judge(Rig rig)
    {
        try
        {
            return NameplateCheck.Of(rig).Findings.Items.Where(static finding => finding.Severity > Severity.Note)
                .GroupBy(static finding => $"{finding.Rule} {finding.Severity} {finding.Subjects}", StringComparer.Ordinal)
                .ToDictionary(static same => same.Key, static same => same.First().Severity, StringComparer.Ordinal);
        }
        catch (InvalidRigException)
        {
            return null;
        }
    }

    /// <summary>Whether each answer, once in the rig, settles its question: one that the label's reading swallows would be asked for ever.</summary>
    private static bool TakesAnswers(OpenQuestion question, Rig rig) => question.Answers.Items.All(
        answer => !Drafts(answer.Apply(rig)).Exists(
            draft => draft.Whole.Topic == question.Topic && question.About.Items.All(draft.Subjects.Items.Contains)));
}
