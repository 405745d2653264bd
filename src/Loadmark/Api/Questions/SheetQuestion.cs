using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Questions;
using Loadmark.Shapes;
using Loadmark.Web.Problems;
using Loadmark.Workshop.Sheets;

namespace Loadmark.Api.Questions;

/// <summary>The sheet that goes with a rig, as the kind of file that is asked for in <c>Accept</c>: PDF, SVG or PNG.</summary>
/// <param name="clock">Tells the day that the sheet says it was made on.</param>
internal sealed class SheetQuestion(TimeProvider clock) : IQuestion
{
    /// <inheritdoc/>
    public ApiOperation Operation { get; } = ApiOperation.OnRig(
        QuestionSpecs.Sheet, Answer(SheetFileKind.Pdf, "The sheet, page by page.")) with
    {
        Answers =
        [
            Answer(SheetFileKind.Pdf, "The sheet, page by page."),
            Answer(SheetFileKind.Svg, "The sheet's pages under one another."),
            Answer(SheetFileKind.Png, "The sheet's pages under one another, 150 dots an inch."),
        ],
        Streams = false,
        Refusals = [ProblemKind.Unreadable, ProblemKind.Store],
    };

    /// <inheritdoc/>
    public PreparedQuestion Prepare(ApiRequest request)
    {
        var problem = TypedSheetOptions.Read(
            new SheetOptions { Made = clock.GetLocalNow() },
            new TypedSheet
            {
                Only = request.Options.Names(QuestionSpecs.SheetParts),
                Paper = request.Options.Text(QuestionSpecs.Paper),
                Labels = request.Options.Text(QuestionSpecs.LabelSizes),
                Contact = request.Options.Text(QuestionSpecs.Contact),
                Reels = request.Options.Names(QuestionSpecs.Reels),
                Ends = request.Options.Text(QuestionSpecs.Ends),
                Cut = request.Options.Text(QuestionSpecs.Cut),
            },
            out var options);
        if (problem is not null)
            return new Problem(ProblemKind.BadRequest, problem);
        if (request.ReadRig(out var text, out var refusal) is not { } rig)
            return refusal;
        options = options with { RigText = StandAloneText.Of(text, rig, request.Library) };
        var kind = Enum.GetValues<SheetFileKind>().First(kind => SheetFile.MediaTypeOf(kind) == request.AnswerTypeOf(Operation));
        return new Computation((_, cancellation) =>
        {
            var document = SheetBuilder.Build(SheetFigures.Of(rig, cancellation), options, cancellation);
            cancellation.ThrowIfCancellationRequested();
            return SheetFile.Write(document, kind);
        });
    }

    private static ApiContent Answer(SheetFileKind kind, string about) =>
        new(SheetFile.MediaTypeOf(kind), new ValueDescription(JsonKind.File, about));
}
