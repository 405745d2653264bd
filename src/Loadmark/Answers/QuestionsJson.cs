using Loadmark.Core.OpenQuestions;
using Loadmark.Shapes;

namespace Loadmark.Answers;

/// <summary>Questions about a rig as JSON.</summary>
internal static class QuestionsJson
{
    private static JsonShape<PossibleAnswer> Answer { get; } = new JsonShape<PossibleAnswer>(
        "PossibleAnswer", "One way to answer a question.")
        .Text("answer", static answer => answer.Words, "The answer in a few words.")
        .Word(
            "leadsTo", static answer => JsonWords.Of(answer.LeadsTo), JsonWords.Severities,
            "The worst of the findings that this answer brings and not every other does; good where it brings none.")
        .Text("line", static answer => answer.Line, "What to type into the rig file for it.");

    /// <summary>The shape of a question.</summary>
    public static JsonShape<OpenQuestion> Question { get; } = new JsonShape<OpenQuestion>(
            "OpenQuestion", "Something that is not known, or was taken for granted, and whose answer changes what the rules say.")
        .Texts("about", static question => question.About, "The loads, outlets or supplies that it is about.")
        .Text("key", static question => question.Key, "The key in the rig file that the answer belongs to.")
        .Text("question", static question => question.Text, "The question.")
        .List(
            "answers",
            static question => question.Answers,
            Answer,
            "Answers, at least two, the usual one first; of a figure those that are common.");
}
