using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Simulation.Spreading;
using Loadmark.Questions;
using Loadmark.Web.Problems;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Api.Questions;

/// <summary>The wish for samples, read as the commands read it.</summary>
internal static class SpreadAsked
{
    /// <summary>Reads what a request says of samples.</summary>
    /// <param name="request">The request.</param>
    /// <param name="refusal">What is wrong with it; null where nothing is.</param>
    /// <returns>The wish; null where no samples are asked for.</returns>
    public static Sampling? In(ApiRequest request, out Problem? refusal)
    {
        var sampling = Sampling.Read(
            request.Options.Text(QuestionSpecs.Spread), request.Options.Text(QuestionSpecs.Seed), out var complaint, mark: "");
        refusal = complaint is null ? null : new Problem(ProblemKind.BadRequest, complaint);
        return sampling;
    }

    /// <summary>How to sample: on one core, so that the page keeps the other.</summary>
    public static SpreadOptions Options(Sampling sampling, SolveProgress progress) =>
        sampling.Options(progress) with { Threads = 1 };
}
