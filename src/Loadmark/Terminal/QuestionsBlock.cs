using Loadmark.Core.Checks;
using Loadmark.Core.OpenQuestions;

namespace Loadmark.Terminal;

/// <summary>What is worth asking about a rig: each question with its answers, where they lead and what to type for them.</summary>
internal static class QuestionsBlock
{
    private const int Indent = 2;
    private const int AnswerIndent = 4;
    private const int WordColumn = 14;

    /// <summary>Answers of one question that are shown; a question about many things has one for each.</summary>
    private const int MostAnswers = 6;

    /// <summary>Questions that are shown: who has answered these asks again.</summary>
    private const int MostQuestions = 8;

    private static readonly string[] Numbers = ["", "One answer", "Two answers", "Three answers", "Four answers", "Five answers"];

    /// <summary>Writes the questions; nothing where there are none.</summary>
    /// <param name="sheet">The page.</param>
    /// <param name="questions">The questions, the worst first.</param>
    public static void Write(Sheet sheet, IReadOnlyList<OpenQuestion> questions)
    {
        if (questions.Count == 0)
            return;
        var number = questions.Count < Numbers.Length ? Numbers[questions.Count] : $"{questions.Count} answers";
        sheet.BlankLine().Line($"{number} would settle this:", SheetStyle.Strong);
        foreach (var question in questions.Take(MostQuestions))
        {
            sheet.PadTo(Indent).Wrap(question.Text, Indent).EndLine();
            foreach (var answer in question.Answers.Items.Take(MostAnswers))
            {
                // An answer that leads to nothing is no verdict: what else the rig has stays as it is.
                if (answer.LeadsTo > Severity.Good && SeverityLook.Of(answer.LeadsTo) is var look)
                    sheet.PadTo(AnswerIndent).Put($"{look.SignOn(sheet)} {look.Word}", look.Style);
                sheet.PadTo(WordColumn);
                sheet.Wrap($"{answer.Words}: type {answer.Line}", WordColumn).EndLine();
            }

            if (question.Answers.Count > MostAnswers)
                sheet.PadTo(AnswerIndent)
                    .Wrap($"and {question.Answers.Count - MostAnswers} answers more, alike", AnswerIndent, SheetStyle.Faint)
                    .EndLine();
        }

        if (questions.Count > MostQuestions)
            sheet.PadTo(Indent).Wrap(
                $"and {questions.Count - MostQuestions} questions more, that could lead to nothing worse: --json has them all",
                Indent,
                SheetStyle.Faint).EndLine();
        sheet.BlankLine();
    }
}
