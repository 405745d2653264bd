namespace Loadmark.Core.Checks;

/// <summary>A rule that judges a wired rig by its nameplates.</summary>
internal abstract class NameplateRule : Rule<NameplateCase>
{
    /// <inheritdoc/>
    public sealed override void Judge(NameplateCase subject, Report report, CancellationToken cancellation) => Judge(subject, report);

    /// <summary>Judges a rig; adding up and comparing is quick enough not to be stopped.</summary>
    /// <param name="subject">The rig, its sums and how its feeds suit their loads.</param>
    /// <param name="report">Where the findings go.</param>
    protected abstract void Judge(NameplateCase subject, Report report);
}
