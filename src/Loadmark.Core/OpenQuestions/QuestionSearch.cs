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
    public static IReadOnlyList<OpenQuestion> Of(Rig rig, CancellationToken cancellation = default) => Search(rig, cancellation).Questions;

    /// <summary>The questions, and whether they are all: on a rig of many things only some can be tried.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="cancellation">Stops it; what was found so far is returned.</param>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    public static FoundQuestions Search(Rig rig, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var drafts = Drafts(rig);
        var judged = new JudgedRigs(rig, cancellation);
        var found = new List<OpenQuestion>();
        var tried = TryAll(drafts, 0, drafts.Count, rig, rig, judged, found);
        return new FoundQuestions([.. found.Order(WorstFirst)], drafts.Count - tried, judged.Steps);
    }

    /// <summary>
    /// Tries some of the drafts. What is unknown elsewhere can hide what an answer changes: a draft is tried with the usual answers to all
    /// else, then as the rig stands. The drafts are halved, and the usual answers to either half put in for the other, so that a rig with
    /// many drafts is not answered anew for each of them.
    /// </summary>
    /// <param name="drafts">All drafts.</param>
    /// <param name="first">The first that is tried.</param>
    /// <param name="end">The first behind them that is not.</param>
    /// <param name="rig">The rig as it stands.</param>
    /// <param name="usual">The rig with the usual answers to all drafts but those that are tried.</param>
    /// <param name="judged">What was judged.</param>
    /// <param name="found">Where the questions go.</param>
    /// <returns>How many were tried to the end.</returns>
    private static int TryAll(
        List<QuestionDraft> drafts, int first, int end, Rig rig, Rig usual, JudgedRigs judged, List<OpenQuestion> found)
    {
        if (first >= end || judged.IsSpent)
            return 0;
        if (end - first > 1)
        {
            var middle = (first + end) / 2;
            var left = drafts.Skip(middle).Take(end - middle).Aggregate(usual, static (so, other) => Usual(other, so));
            var right = drafts.Skip(first).Take(middle - first).Aggregate(usual, static (so, other) => Usual(other, so));
            return TryAll(drafts, first, middle, rig, left, judged, found) + TryAll(drafts, middle, end, rig, right, judged, found);
        }

        var question = Try(drafts[first], usual, judged) ?? Try(drafts[first], rig, judged);

        // What was judged up to the end of the budget only is no question yet.
        if (judged.IsSpent)
            return 0;
        if (question is not null && TakesAnswers(question, rig, judged))
            found.Add(question);
        return 1;
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
        var matter = draft.Subjects.Items.Where(
            subject => !judged.IsSpent && Judged(draft.Build([subject]), rig, judged) is not null).ToList();
        return matter.Count == 0 || matter.Count == draft.Subjects.Count ? question : Judged(draft.Build([.. matter]), rig, judged);
    }

    private static OpenQuestion? Judged(OpenQuestion question, Rig rig, JudgedRigs judged)
    {
        var answers = new List<PossibleAnswer>();
        var said = new List<Dictionary<string, Finding>>();
        foreach (var answer in question.Answers)
        {
            if (judged.IsSpent)
                return null;
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
    private static bool TakesAnswers(OpenQuestion question, Rig rig, JudgedRigs judged)
    {
        var about = question.About.Items.ToHashSet(StringComparer.Ordinal);
        foreach (var answer in question.Answers)
        {
            judged.Count();
            if (Drafts(answer.Apply(rig)).Exists(
                draft => draft.Whole.Topic == question.Topic && about.IsSubsetOf(draft.Subjects.Items)))
                return false;
        }

        return true;
    }
}
