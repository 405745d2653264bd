using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Core.OpenQuestions;
using Loadmark.Questions;
using Loadmark.Simulation;
using Loadmark.Web.Problems;

namespace Loadmark.Api.Questions;

/// <summary>As wired: is it safe, does it run, what is left?</summary>
internal sealed class CheckQuestion : IQuestion
{
    /// <inheritdoc/>
    public ApiOperation Operation { get; } = new()
    {
        Name = QuestionSpecs.Check.Name,
        Group = "Questions",
        Summary = QuestionSpecs.Check.Sentence,
        Options = [.. QuestionSpecs.Check.EveryOption, ApiOptions.File],
        Bodies = ApiContent.Rig,
        Answers = [ApiContent.Of(CheckJson.Check, "check.json")],
        Streams = true,
        Refusals = [ProblemKind.Unreadable, ProblemKind.Store],
    };

    /// <inheritdoc/>
    public PreparedQuestion Prepare(ApiRequest request)
    {
        if (request.ReadRig(out var refusal) is not { } rig)
            return refusal;
        var depth = request.Options.Has(QuestionSpecs.AlsoStartUp) ? AnalysisDepth.WholeVerdict : AnalysisDepth.Verdict;
        return new Computation((_, cancellation) =>
        {
            var check = RigAnalysis.Of(rig, depth, cancellation).Check;
            return AnswerBytes.Of(output => CheckJson.Write(
                output, [new CheckAnswer(request.File, check, []) { Questions = QuestionSearch.Of(rig, cancellation) }]));
        });
    }
}
