namespace Loadmark.Testing;

/// <summary>
/// How many rigs, labels or edits a test makes up. <c>./test</c> tries a third of them; all are tried by the bench <c>rounds</c>, which
/// says so with <see cref="Variable"/>. What a test asserts is the same for both.
/// </summary>
public static class Rounds
{
    /// <summary>The environment variable that, as <c>all</c>, has every one tried.</summary>
    public const string Variable = "LOADMARK_ROUNDS";

    private const int Share = 3;

    private static readonly bool IsAll = Environment.GetEnvironmentVariable(Variable) == "all";

    /// <summary>So many are tried in this run; at least one.</summary>
    /// <param name="all">So many are tried in the longest run; at least one.</param>
    public static int Of(int all) => IsAll ? all : (all + Share - 1) / Share;

    /// <summary>Of cases that are listed rather than made up, every third; the kinds that they are of are to come round oftener than that.</summary>
    /// <param name="all">All cases, in an order that stays.</param>
    public static IEnumerable<T> Some<T>(IEnumerable<T> all) => all.Where(static (_, index) => IsAll || index % Share == 0);
}
