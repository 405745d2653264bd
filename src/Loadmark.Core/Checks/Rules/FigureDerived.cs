using Loadmark.Core.Gear;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A figure the verdict rests on was computed from others because it is not printed.</summary>
internal sealed class FigureDerived : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.FigureDerived;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Note;

    /// <inheritdoc/>
    public override string Source => "I = P/V (OpenStax University Physics vol. 2, section 9.5)";

    protected override void Judge(NameplateCase subject, Report report)
    {
        var rig = subject.Rig;
        foreach (var load in rig.Loads)
        {
            foreach (var derivation in load.Rating.Derivations)
                report.Add(this, [load.Id], $"The {derivation.What} of {load.Id} is not printed; it was computed.", derivation.Working);
        }

        foreach (var outlet in rig.Outlets)
        {
            if (outlet.Feeds.Count > 0 && outlet.Limit is { Origin: Origin.Derived } limit
                && outlet is { Volts: { } volts, Mode.Power: { } power })
                report.Add(
                    this,
                    [outlet.Name],
                    $"The limit of {outlet.Name} is not printed in amps; it was computed.",
                    $"{power} ÷ {volts} = {limit.Value}");
        }
    }
}
