using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Core.OpenQuestions;
using Loadmark.Questions;
using Loadmark.Simulation;

namespace Loadmark.Api.Questions;

/// <summary>As wired: is it safe, does it run, what is left?</summary>
internal sealed class CheckQuestion : IQuestion
{
    /// <inheritdoc/>
    public ApiOperation Operation { get; } = ApiOperation.OnRig(QuestionSpecs.Check, ApiContent.Of(CheckJson.Check, "check.json"));

    /// <inheritdoc/>
    public PreparedQuestion Prepare(ApiRequest request)
    {
        if (request.ReadRig(out var refusal) is not { } rig)
            return refusal;
        var depth = request.Options.Has(QuestionSpecs.AlsoStartUp) ? AnalysisDepth.WholeVerdict : AnalysisDepth.Verdict;
        return new Computation((_, cancellation) =>
        {
            var check = RigAnalysis.Of(rig, depth, cancellation).Check;
            var asked = QuestionSearch.Search(rig, cancellation);
            return AnswerBytes.Of(output => CheckJson.Write(
                output, [new CheckAnswer(request.File, asked.Tell(check), []) { Questions = asked.Questions }]));
        });
    }
}
