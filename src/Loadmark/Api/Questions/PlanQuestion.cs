using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Planning;
using Loadmark.Planning.Explaining;
using Loadmark.Planning.Search;
using Loadmark.Questions;

namespace Loadmark.Api.Questions;

/// <summary>What should feed what?</summary>
internal sealed class PlanQuestion : IQuestion
{
    /// <inheritdoc/>
    public ApiOperation Operation { get; } = ApiOperation.OnRig(QuestionSpecs.Plan, ApiContent.Of(PlanJson.Plan, "plan.json")) with
    {
        About = "The rig's own wiring does not bind, except feeds with 'pinned: true'.",
    };

    /// <inheritdoc/>
    public PreparedQuestion Prepare(ApiRequest request)
    {
        if (request.ReadRig(out var refusal) is not { } rig)
            return refusal;
        if (OnlySupplies.Of(request, rig, out refusal) is var only && refusal is not null)
            return refusal;
        return new Computation((progress, cancellation) =>
        {
            var options = new PlanOptions
            {
                Only = only,
                FewestMoves = request.Options.Has(QuestionSpecs.FewestMoves),
                AcrossBoards = request.Options.Has(QuestionSpecs.AcrossBoards),
                Progress = progress,
            };
            var plan = RigPlanner.Plan(rig, options, cancellation);
            var explanation = PlanExplainer.Explain(plan, options, cancellation);
            return AnswerBytes.Of(output => PlanJson.Write(output, rig, plan, explanation));
        });
    }
}
