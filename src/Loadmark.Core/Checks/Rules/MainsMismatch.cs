using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>The mains where the rig is played is not what a supply is printed for.</summary>
internal sealed class MainsMismatch : Rule
{
    /// <summary>The tolerance of the mains about its nominal voltage: ±10 % (IEC 60038).</summary>
    private const decimal Tolerance = 0.10m;

    /// <inheritdoc/>
    public override string Name => "mains-mismatch";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source => "IEC 60038, standard voltages: 230 V ± 10 %";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var supply in rig.Supplies)
        {
            var id = supply.Supply.Id;
            if (supply.Mains?.Volts is not { } printed)
            {
                report.CannotTell(this, [id], $"The mains input of {id} is not known. Read its label before plugging it in.");
                continue;
            }

            if (rig.Rig.Mains is not { } mains)
            {
                // 100 V to 240 V covers every nominal single-phase mains voltage, so nothing is left to tell.
                if (printed.Low.Value > 100 || printed.High.Value < 240)
                    report.CannotTell(this, [id], $"The rig does not say on which mains it is played; {id} is for {printed}.");
                continue;
            }

            var least = printed.Low * (1 - Tolerance);
            var most = printed.High * (1 + Tolerance);
            if (mains.Volts < least || mains.Volts > most)
            {
                var working = mains.Volts > most
                    ? $"{mains.Volts} > 1.10 × {printed.High} = {most}"
                    : $"{mains.Volts} < 0.90 × {printed.Low} = {least}";
                report.Add(this, [id], $"{id} is for mains of {printed}; here it is {mains}.", working, $"Use a supply for {mains}, or a transformer of the right rating.");
            }
            else if (supply.Mains.Hertz is { IsSingle: true } one && mains.Hertz is null)
            {
                report.CannotTell(this, [id], $"The rig does not give the frequency of the mains; {id} is for {one}.");
            }
            else if (supply.Mains.Hertz is { } hertz && mains.Hertz is { } here && here < hertz.Low)
            {
                // Flux in a transformer's core is proportional to voltage over frequency: at a lower one it saturates and overheats.
                report.Add(
                    this,
                    [id],
                    $"{id} is for {hertz}; the mains here is {here}, and a transformer made for the higher frequency may overheat.",
                    $"{here} < {hertz.Low}",
                    $"Use a supply that is printed for {here}.");
            }
            else if (supply.Mains.Hertz is { } others && mains.Hertz is { } now && now > others.High)
            {
                report.CannotTell(this, [id], $"{id} is printed for {others} and the mains here is {now}: most supplies bear it; its maker knows.");
            }
        }
    }
}
