using Loadmark.Web.Problems;

namespace Loadmark.Api.Execution;

/// <summary>A question that has been understood, or is refused.</summary>
/// <param name="Computation">Computes the answer; null where it is refused.</param>
/// <param name="Refusal">Why it is refused; null where it is not.</param>
internal readonly record struct PreparedQuestion(Computation? Computation, Problem? Refusal)
{
    /// <summary>A question that is refused.</summary>
    public static implicit operator PreparedQuestion(Problem? refusal) => new(null, refusal);

    /// <summary>A question that is understood, with what computes its answer.</summary>
    public static implicit operator PreparedQuestion(Computation solve) => new(solve, null);
}
