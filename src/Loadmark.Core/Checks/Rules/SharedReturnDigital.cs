namespace Loadmark.Core.Checks.Rules;

/// <summary>A digital load shares a return with other loads.</summary>
internal sealed class SharedReturnDigital : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.SharedReturnDigital;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Noise;

    /// <inheritdoc/>
    public override string Source =>
        "common-impedance coupling: the digital load's current pulses drop a voltage in the shared return (V = I·R); "
        + "that it is heard is common practice, no source";

    protected override void Judge(NameplateCase subject, Report report)
    {
        foreach (var (group, _, occupancy) in subject.Returns)
        {
            if (group.Loads.Count < 2)
                continue;

            var digital = new List<string>();
            var other = new List<string>();
            var unknown = new List<string>();
            foreach (var load in group.Loads)
            {
                (load.Rating.IsDigital == true ? digital : other).Add(load.Id);
                if (load.Rating.IsDigital is null)
                    unknown.Add(load.Id);
            }

            if (occupancy.SharesDigital)
            {
                report.Add(
                    this,
                    Phrases.Subjects(group, [.. digital, .. other]),
                    other.Count > 0
                        ? $"{Phrases.List(digital)} {Phrases.Is(digital.Count)} digital and "
                            + $"{Phrases.Verb(digital.Count, "shares", "share")} the return of {Phrases.List(group.Names)} with "
                            + $"{Phrases.List(other)}: a whine may come through."
                        : $"{Phrases.List(digital)} are digital and share the return of {Phrases.List(group.Names)}: "
                            + "each may be heard in the others.",
                    $"{group.Loads.Count} loads on one return",
                    $"Give {Phrases.List(digital)} an isolated outlet {Phrases.Verb(digital.Count, "of its own", "each")}.",
                    [.. digital]);
            }

            if (unknown.Count > 0)
                report.CannotTell(
                    this,
                    [.. unknown],
                    $"Whether {Phrases.List(unknown)} {Phrases.Is(unknown.Count)} digital is not given ('kind'): "
                    + "taken as analog on a shared return.");
        }
    }
}
