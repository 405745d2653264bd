using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Simulation;
using Loadmark.Simulation.Spreading;
using Loadmark.Questions;

namespace Loadmark.Api.Questions;

/// <summary>What voltage does each load really get?</summary>
internal sealed class SettleQuestion : IQuestion
{
    /// <inheritdoc/>
    public ApiOperation Operation { get; } = ApiOperation.OnRig(
        QuestionSpecs.Settle, ApiContent.Of(SimulationJson.SteadyState, "settle.json"));

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
