using Loadmark.Web.Problems;

namespace Loadmark.Api.Answering;

/// <summary>A question that has been understood, or is refused.</summary>
/// <param name="Solve">Computes the answer; null where it is refused.</param>
/// <param name="Refusal">Why it is refused; null where it is not.</param>
internal readonly record struct Preparation(Solve? Solve, Problem? Refusal)
{
    /// <summary>Refuses.</summary>
    public static implicit operator Preparation(Problem? refusal) => new(null, refusal);

    /// <summary>Understood.</summary>
    public static implicit operator Preparation(Solve solve) => new(solve, null);
}
