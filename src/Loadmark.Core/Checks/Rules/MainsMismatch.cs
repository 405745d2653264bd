using System.Collections.Immutable;
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

    private static bool Fits(QuantityRange<Volt> printed, Volts mains) =>
        mains >= printed.Low * (1 - Tolerance) && mains <= printed.High * (1 + Tolerance);

    private static string Working(QuantityRange<Volt> printed, ImmutableArray<QuantityRange<Volt>> choices, Volts mains)
    {
        var most = printed.High * (1 + Tolerance);
        var least = printed.Low * (1 - Tolerance);
        if (mains > most)
            return $"{mains} > 1.10 × {printed.High} = {most}";
        if (mains < least)
            return $"{mains} < 0.90 × {printed.Low} = {least}";
        return string.Join("; ", choices.Select(choice => $"{mains} is not within ± 10 % of {choice}"));
    }

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

            var choices = supply.Mains.Choices;
            var fitting = choices.Count(choice => Fits(choice, mains.Volts));
            if (choices.Length > 1 ? fitting == 0 : !Fits(printed, mains.Volts))
            {
                var given = choices.Length > 1 ? string.Join(" or ", choices) : $"{printed}";
                report.Add(this, [id], $"{id} is for mains of {given}; here it is {mains}.", Working(printed, choices, mains.Volts), $"Use a supply for {mains}, or a transformer of the right rating.");
            }
            else if (fitting > 0 && fitting < choices.Length)
            {
                report.CannotTell(this, [id], $"{id} takes {string.Join(" or ", choices)}; how its selector is set is not given. Set it to {mains.Volts} before plugging in.");
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
