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
}
