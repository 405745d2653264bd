namespace Loadmark.Storage.Tests.Damage;

/// <summary>One damage and what came of it.</summary>
/// <param name="Kind">What was done.</param>
/// <param name="Outcome">What came of it.</param>
/// <param name="About">Where it was done, and the sentence, the difference or the exception that came of it.</param>
internal sealed record DamageRun(DamageKind Kind, DamageOutcome Outcome, string About)
{
    /// <summary>Whether the program broke, broke what it refused, or gave out what is damaged without a word.</summary>
    public bool IsBad => Outcome is DamageOutcome.FaultInProgram or DamageOutcome.DamagedFurther or DamageOutcome.Silent;
}
