using Loadmark.Web.Problems;

namespace Loadmark.Api.Execution;

/// <summary>Answers with a problem.</summary>
/// <param name="problem">The problem.</param>
internal sealed class ProblemResult(Problem problem) : IResult
{
    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext) => ProblemAnswer.WriteAsync(httpContext, problem);
}
