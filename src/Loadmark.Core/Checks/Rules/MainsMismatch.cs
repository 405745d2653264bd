using System.Collections.Immutable;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks.Rules;

/// <summary>The mains where the rig is played is not what a supply is printed for.</summary>
internal sealed class MainsMismatch : NameplateRule
{
    /// <summary>The tolerance of the mains about its nominal voltage: ±10 % (IEC 60038).</summary>
    private const decimal Tolerance = 0.10m;

    /// <summary>A range up to this share wide is one nominal voltage, 220-240 V; a wider one is of a supply that switches.</summary>
    private const decimal OneNominal = 1.2m;

    /// <inheritdoc/>
    public override RuleId Id => RuleId.MainsMismatch;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source =>
        "IEC 60038, standard voltages: 230 V ± 10 %; Faraday's law: the flux in a transformer's core goes with voltage over frequency";

    protected override void Judge(NameplateCase subject, Report report)
    {
        var rig = subject.Rig.Rig;
        foreach (var supply in subject.Rig.Supplies)
        {
            var id = supply.Supply.Id;
            if (supply.Mains?.Volts is not { } printed)
                TellUnprinted(supply, rig.Mains, report);
            else if (rig.Mains is { } mains)
                JudgeSupply(id, supply.Mains, printed, mains, report);
            else if (printed.Low.Value > 100 || printed.High.Value < 240 || !supply.Mains.Choices.IsEmpty)
                report.Add(
                    this,
                    Severity.Note,
                    [id],
                    $"The rig does not say on which mains it is played; {id} is for {printed}.",
                    "mains not given",
                    "Write it as 'mains', or look at the wall before plugging in.");
        }
    }

    /// <summary>
    /// A supply without a mains input printed is taken to be for the mains where it is; one that is fed by an adaptor has none.
    /// </summary>
    private void TellUnprinted(SupplyRating supply, RigMains? mains, Report report)
    {
        var id = supply.Supply.Id;
        if (supply.Supply.Label?.Input is not null)
            return;
        if (mains is null)
            report.CannotTell(this, [id], $"The mains input of {id} is not known. Read its label before plugging it in.");
        else
            report.Add(
                this,
                Severity.Note,
                [id],
                $"The mains input of {id} is not given: taken as made for the mains here, {mains.Volts}.",
                "assumed to suit the mains",
                "Read its label once.");
    }

    private void JudgeSupply(string id, MainsInput input, QuantityRange<Volt> printed, RigMains mains, Report report)
    {
        var choices = input.Choices;
        var fitting = choices.Count(choice => IsOver(choice, mains.Volts) is null);
        var isOff = choices.Length > 1 ? fitting == 0 : IsOver(printed, mains.Volts) is not null;
        if (isOff)
        {
            TellVoltage(id, printed, choices, mains.Volts, report);
            return;
        }

        if (fitting > 0 && fitting < choices.Length)
        {
            var harms = choices.Any(choice => IsOver(choice, mains.Volts) is true);
            report.Add(
                this,
                harms ? Severity.Unsure : Severity.Margin,
                [id],
                $"{id} takes {string.Join(" or ", choices)}, and how its selector is set is not given: "
                + $"{(harms ? "set too low, it is destroyed" : "set too high, it does not run")}.",
                $"{string.Join(" or ", choices)}; here {mains.Volts}",
                $"Set it to {choices.First(choice => IsOver(choice, mains.Volts) is null)} before plugging in.");
        }

        TellFrequency(id, input, printed, mains, report);
    }

    private void TellVoltage(
        string id, QuantityRange<Volt> printed, ImmutableArray<QuantityRange<Volt>> choices, Volts mains, Report report)
    {
        var given = choices.Length > 1 ? string.Join(" or ", choices) : $"{printed}";
        var isHigh = choices.Length > 1 ? choices.Any(choice => IsOver(choice, mains) is true) : IsOver(printed, mains) is true;
        report.Add(
            this,
            isHigh ? Severity.Harm : Severity.Fails,
            [id],
            $"{id} is for mains of {given}; here it is {mains}{(isHigh ? "" : ", too little for it to hold its voltage")}.",
            Working(printed, choices, mains),
            $"Use a supply for {mains}, or a transformer of the right rating.");
    }

    private void TellFrequency(string id, MainsInput input, QuantityRange<Volt> printed, RigMains mains, Report report)
    {
        if (input.Hertz is not { } hertz)
            return;
        if (mains.Hertz is not { } here)
        {
            if (hertz.IsSingle)
                report.Add(
                    this,
                    Severity.Note,
                    [id],
                    $"The rig does not give the frequency of the mains; {id} is for {hertz}.",
                    "frequency not given",
                    "Write it as 'mains': 230 V 50 Hz.");
            return;
        }

        if (here > hertz.High)
        {
            report.CannotTell(
                this,
                [id],
                $"{id} is printed for {hertz} and the mains here is {here}: less flux in a transformer, and most supplies bear it; "
                + "its maker knows.");
            return;
        }

        // The core is made for the highest printed voltage at the lowest printed frequency.
        var flux = mains.Volts.Value / here.Value;
        var made = printed.High.Value / hertz.Low.Value;
        if (here >= hertz.Low || made <= 0)
            return;

        var working = $"{mains.Volts} ÷ {here} = {Math.Round(flux, 2)} V/Hz; {printed.High} ÷ {hertz.Low} = {Math.Round(made, 2)} V/Hz";
        if (flux > made * (1 + Tolerance) && printed.High <= printed.Low * OneNominal)
            report.Add(
                this,
                [id],
                $"{id} is for {hertz}; the mains here is {here}. A transformer made for the higher frequency saturates and overheats.",
                $"{working}: {Math.Round(flux / made, 2)} times",
                $"Use a supply that is printed for {here}.");
        else
        {
            var why = printed.High > printed.Low * OneNominal
                ? "a supply for such a range switches and bears it"
                : "at this voltage a transformer's core bears it";
            report.Add(
                this,
                Severity.Margin,
                [id],
                $"{id} is printed for {hertz} and the mains here is {here}; {why}.",
                working,
                "Feel after half an hour whether it stays merely warm.");
        }
    }

    /// <summary>
    /// Whether the mains is over what is printed by more than its tolerance; false where it is under it; null where it fits.
    /// </summary>
    private static bool? IsOver(QuantityRange<Volt> printed, Volts mains)
    {
        if (mains > printed.High * (1 + Tolerance))
            return true;
        return mains < printed.Low * (1 - Tolerance) ? false : null;
    }

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
}
