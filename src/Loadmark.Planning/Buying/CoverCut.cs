namespace Loadmark.Planning.Buying;

/// <summary>What every combination that feeds everything must have: Σ worth × count ≥ need.</summary>
/// <param name="Worths">What one of each offer counts at the most; no more than is needed.</param>
/// <param name="Need">What is needed beyond what the supplies and leads there are count at the most.</param>
internal sealed record CoverCut(long[] Worths, long Need)
{
    /// <summary>Whether every combination that has what this one needs has what another one needs.</summary>
    public bool Implies(CoverCut other)
    {
        // Shares of the need: where none is greater here, what adds up to the whole here adds up to the whole there.
        for (var offer = 0; offer < Worths.Length; offer++)
        {
            if ((Int128)Worths[offer] * other.Need > (Int128)other.Worths[offer] * Need)
                return false;
        }

        return true;
    }

    /// <summary>Whether a basket has what is needed.</summary>
    public bool HoldsFor(Basket basket)
    {
        Int128 sum = 0;
        for (var offer = 0; offer < Worths.Length; offer++)
            sum += (Int128)Worths[offer] * basket.Counts[offer];
        return sum >= Need;
    }
}
