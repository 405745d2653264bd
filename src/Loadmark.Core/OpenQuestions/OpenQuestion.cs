using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.OpenQuestions;

/// <summary>Something that is not known, or was taken for granted, and whose answer would change what the rules say.</summary>
/// <param name="Topic">What it is about.</param>
/// <param name="About">The ids of the loads, outlets or supplies that it is about, at least one.</param>
/// <param name="Key">The key in the rig file that the answer belongs to: <c>polarity</c>.</param>
/// <param name="Text">The question in plain words.</param>
/// <param name="Answers">Answers, at least two, the usual one first. Where a figure is asked for, those that are common.</param>
public sealed record OpenQuestion(QuestionTopic Topic, ValueList<string> About, string Key, string Text, ValueList<PossibleAnswer> Answers)
{
    /// <summary>
    /// The rig that the answers were tried on: with the usual answers to everything else that is not known, or as it stands. Null before
    /// that.
    /// </summary>
    public Rig? TriedOn { get; init; }

    /// <summary>The worst that an answer could lead to.</summary>
    public Severity Worst
    {
        get
        {
            var worst = Severity.Good;
            foreach (var answer in Answers)
                worst = answer.LeadsTo > worst ? answer.LeadsTo : worst;
            return worst;
        }
    }
}
