using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Simulation;
using Loadmark.Simulation.Spreading;
using Loadmark.Questions;
using Loadmark.Web.Problems;

namespace Loadmark.Api.Questions;

/// <summary>What voltage does each load really get?</summary>
internal sealed class SettleQuestion : IQuestion
{
    /// <inheritdoc/>
    public ApiOperation Operation { get; } = new()
    {
        Name = QuestionSpecs.Settle.Name,
        Group = "Questions",
        Summary = QuestionSpecs.Settle.Sentence,
        Options = [.. QuestionSpecs.Settle.EveryOption, ApiOptions.File],
        Bodies = ApiContent.Rig,
        Answers = [ApiContent.Of(SimulationJson.SteadyState, "settle.json")],
        Streams = true,
        Refusals = [ProblemKind.Unreadable, ProblemKind.Store],
    };

    /// <inheritdoc/>
    public PreparedQuestion Prepare(ApiRequest request)
    {
        if (request.ReadRig(out var refusal) is not { } rig)
            return refusal;
        if (SpreadAsked.In(request, out refusal) is var sampling && refusal is not null)
            return refusal;
        return new Computation((progress, cancellation) =>
        {
            var (circuit, settled, check) = RigAnalysis.Settle(rig, cancellation);
            var spread = sampling is null ? null : RigSpread.Settle(circuit, SpreadAsked.Options(sampling, progress), cancellation);
            return AnswerBytes.Of(output => SimulationJson.Write(output, settled, check, spread));
        });
    }
}
