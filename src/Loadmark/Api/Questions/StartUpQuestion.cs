using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Simulation;
using Loadmark.Simulation.Spreading;
using Loadmark.Questions;

namespace Loadmark.Api.Questions;

/// <summary>Does it all come up, and stay up?</summary>
internal sealed class StartUpQuestion : IQuestion
{
    /// <inheritdoc/>
    public ApiOperation Operation { get; } = ApiOperation.OnRig(
        QuestionSpecs.StartUp, ApiContent.Of(SimulationJson.FirstSeconds, "startup.json"));

    /// <inheritdoc/>
    public PreparedQuestion Prepare(ApiRequest request)
    {
        if (request.ReadRig(out var refusal) is not { } rig)
            return refusal;
        if (SpreadAsked.In(request, out refusal) is var sampling && refusal is not null)
            return refusal;
        return new Computation((progress, cancellation) =>
        {
            var (circuit, started, check) = RigAnalysis.StartUp(rig, cancellation);
            var spread = sampling is null
                ? null
                : RigSpread.StartUp(circuit, SpreadAsked.Options(sampling, progress), cancellation: cancellation);
            return AnswerBytes.Of(output => SimulationJson.Write(output, started, check, spread));
        });
    }
}
