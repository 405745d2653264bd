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
    private static readonly Comparer<OpenQuestion> WorstFirst = Comparer<OpenQuestion>.Create(CompareWorstFirst);

    /// <summary>The questions, those first whose answer could lead to the worst; empty where nothing is plugged in.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="cancellation">Stops it; what was found so far is returned.</param>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    public static IReadOnlyList<OpenQuestion> Of(Rig rig, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var drafts = Drafts(rig);
        var judged = new JudgedRigs();
        var found = new List<OpenQuestion>();
        foreach (var draft in drafts)
        {
            if (cancellation.IsCancellationRequested)
                break;

            // What is unknown elsewhere can hide what an answer changes: it is tried with the usual answers to all else, then as the rig
            // stands.
            var usual = drafts.Where(other => !ReferenceEquals(other, draft)).Aggregate(rig, static (so, other) => Usual(other, so));
            if ((Try(draft, usual, judged) ?? Try(draft, rig, judged)) is { } question && TakesAnswers(question, rig))
                found.Add(question);
        }

        return [.. found.Order(WorstFirst)];
    }

    private static int CompareWorstFirst(OpenQuestion? one, OpenQuestion? other)
    {
        var worse = other!.Worst - one!.Worst;
        return worse != 0 ? worse : one.Topic - other.Topic;
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
    private static OpenQuestion? Try(QuestionDraft draft, Rig rig, JudgedRigs judged)
    {
        var question = Judged(draft.Whole, rig, judged);
        if (question is null || !draft.IsOfEach || draft.Subjects.Count == 1)
            return question;

        // Who is asked about many things is asked only about those of which the answer matters.
        var matter = draft.Subjects.Items.Where(subject => Judged(draft.Build([subject]), rig, judged) is not null).ToList();
        return matter.Count == 0 || matter.Count == draft.Subjects.Count ? question : Judged(draft.Build([.. matter]), rig, judged);
    }

    private static OpenQuestion? Judged(OpenQuestion question, Rig rig, JudgedRigs judged)
    {
        var answers = new List<PossibleAnswer>();
        var said = new List<Dictionary<string, Finding>>();
        foreach (var answer in question.Answers)
        {
            if (judged.Of(answer.Apply(rig)) is { } findings)
            {
                answers.Add(answer);
                said.Add(findings);
            }
        }

        if (answers.Count < 2 || said.TrueForAll(one => one.Count == said[0].Count && one.Keys.All(said[0].ContainsKey)))
            return null;

        return question with
        {
            TriedOn = rig,
            Answers = [.. answers.Select((answer, place) => answer with { LeadsTo = WorstOf(said[place], said) })],
        };
    }

    /// <summary>The worst of the findings that one answer brings and not every answer does; good for none.</summary>
    private static Severity WorstOf(Dictionary<string, Finding> own, List<Dictionary<string, Finding>> all)
    {
        var worst = Severity.Good;
        foreach (var (key, finding) in own)
        {
            if (finding.Severity > worst && !all.TrueForAll(one => one.ContainsKey(key)))
                worst = finding.Severity;
        }

        return worst;
    }

    /// <summary>
    /// Whether each answer, once in the rig, settles its question: one that the label's reading swallows would be asked for ever.
    /// </summary>
    private static bool TakesAnswers(OpenQuestion question, Rig rig) => question.Answers.Items.All(
        answer => !Drafts(answer.Apply(rig)).Exists(
            draft => draft.Whole.Topic == question.Topic && question.About.Items.All(draft.Subjects.Items.Contains)));
}
