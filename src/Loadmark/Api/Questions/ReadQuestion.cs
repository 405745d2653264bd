using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Core.Nameplates;
using Loadmark.Files;
using Loadmark.Shapes;
using Loadmark.Questions;
using Loadmark.Web.Problems;

namespace Loadmark.Api.Questions;

/// <summary>What do these nameplates say?</summary>
/// <param name="limits">How many are taken at once.</param>
internal sealed class ReadQuestion(ApiLimits limits) : IQuestion
{
    private static readonly BodyMember Texts = new("texts", "What is printed, as it stands; one label each.") { IsList = true };

    private static readonly BodyShape Asked = new("TextsToRead", "Labels to read.", [Texts]);

    /// <inheritdoc/>
    public ApiOperation Operation { get; } = new()
    {
        Name = QuestionSpecs.Read.Name,
        Group = "Questions",
        Summary = QuestionSpecs.Read.Sentence,
        About = $"One reading for each text, in the order given; at most {limits.MostTexts}. "
            + "In a body of plain text each line is a label, and empty lines count for nothing. "
            + "Asked for application/x-ndjson, each reading is a line, as the command writes it.",
        Bodies = [ApiContent.Of(Asked, "texts.json"), ApiContent.Text(ApiContent.Plain, "Labels to read, one a line.", "texts.txt")],
        Answers =
        [
            ApiContent.Of(NameplateJson.Readings, "read.json"),
            ApiContent.Text(ApiContent.JsonLines, "One reading a line, each an object as Reading."),
        ],
        Refusals = [ProblemKind.Unreadable],
    };

    /// <inheritdoc/>
    public PreparedQuestion Prepare(ApiRequest request)
    {
        var texts = request.MediaType == ApiContent.Json ? TextsIn(request, out var refusal) : LinesIn(request, out refusal);
        if (texts is null)
            return refusal;
        if (texts.Count > limits.MostTexts)
            return new Problem(ProblemKind.BadRequest, $"{texts.Count} texts; at most {limits.MostTexts} are read at once.");
        if (request.AnswerTypeOf(Operation) == ApiContent.JsonLines)
            return new Computation((_, _) => AnswerBytes.Of(output => NameplateJson.Write(output, texts)));
        return new Computation((_, _) => AnswerBytes.Of(
            output => JsonFormat.WriteLine(output, NameplateJson.Readings, texts.Select(static text => NameplateReader.Read(text)))));
    }

    private static IReadOnlyList<string>? TextsIn(ApiRequest request, out Problem? refusal) =>
        BodyObject.Read(request.Body, Asked, out refusal) is { } body
            ? body.Texts(Texts, out refusal)
            : null;

    private static List<string>? LinesIn(ApiRequest request, out Problem? refusal)
    {
        var text = RigFile.Decode(request.Body.Span, "", out var errors);
        refusal = text is null ? UnreadableProblem.Of(errors, []) : null;
        if (text is null)
            return null;
        var lines = new List<string>();
        using var reader = new StringReader(text);
        while (reader.ReadLine() is { } line)
        {
            if (!string.IsNullOrWhiteSpace(line))
                lines.Add(line);
        }

        return lines;
    }
}
