using Loadmark.Core.Rigs;

namespace Loadmark.Core.OpenQuestions;

/// <summary>A question that may be worth asking.</summary>
/// <param name="Subjects">What it could be about.</param>
/// <param name="IsOfEach">
/// Whether its answers are "none of them", and then one for each of the subjects in their order (of one subject: no and yes), so that the
/// subjects of which the answer changes nothing can be left out.
/// </param>
/// <param name="Build">Makes it of some of the subjects.</param>
internal sealed record QuestionDraft(ValueList<string> Subjects, bool IsOfEach, Func<ValueList<string>, OpenQuestion> Build)
{
    /// <summary>The question about all of the subjects.</summary>
    public OpenQuestion Whole { get; } = Build(Subjects);

    /// <summary>A question with two answers that several things may be asked at once, the usual answer first.</summary>
    /// <param name="topic">What it is about.</param>
    /// <param name="key">The key in the rig file.</param>
    /// <param name="subjects">What it could be about.</param>
    /// <param name="text">The question about some of them.</param>
    /// <param name="words">The usual answer for all of several, the usual answer of one, and the other.</param>
    /// <param name="line">What to type for one of them; true for the usual answer.</param>
    /// <param name="apply">Puts the answer for some of them into a rig; true for the usual answer.</param>
    public static QuestionDraft OfEach(
        QuestionTopic topic,
        string key,
        ValueList<string> subjects,
        Func<ValueList<string>, string> text,
        (string None, string Usual, string Other) words,
        Func<string, bool, string> line,
        Func<Rig, ValueList<string>, bool, Rig> apply)
    {
        return new QuestionDraft(subjects, IsOfEach: true, some => new OpenQuestion(
            topic,
            some,
            key,
            text(some),
            [
                Answer(some, some.Count == 1 ? words.Usual : words.None, isUsual: true),
                .. some.Items.Select(id => Answer([id], some.Count == 1 ? words.Other : $"{id}: {words.Other}", isUsual: false)),
            ]));

        PossibleAnswer Answer(ValueList<string> ids, string answer, bool isUsual) => new(
            answer, string.Join(", ", ids.Items.Select(id => line(id, isUsual))), rig => apply(rig, ids, isUsual));
    }
}
