using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Rigs;

/// <summary>A supply that is fed by another: it draws as a load does, and is wired by its own name.</summary>
public static class SupplyInput
{
    /// <summary>What a supply draws at its low-voltage input, as a load of the supply's id: at most what is printed.</summary>
    /// <param name="supply">The supply.</param>
    /// <returns>Null where its label prints no low-voltage input.</returns>
    public static Load? Of(Supply supply)
    {
        ArgumentNullException.ThrowIfNull(supply);
        return supply.Label?.Input is { } input
            ? new Load
            {
                Id = supply.Id,
                Name = supply.Name,
                Kind = new LoadKind("supply"),
                Board = supply.Board,
                Label = NameplateReader.Read(TextOf(input, supply.Label)),
            }
            : null;
    }

    /// <summary>
    /// Whether a supply gives nothing unless another feeds it: it has a low-voltage input and holds no charge of its own.
    /// </summary>
    /// <param name="supply">The supply.</param>
    public static bool MustBeFed(Supply supply)
    {
        ArgumentNullException.ThrowIfNull(supply);
        return supply.Label is { Input: not null, HoldsCharge: false };
    }

    /// <summary>The input as the label of a load would print it.</summary>
    private static string TextOf(LowVoltageInput input, Nameplate label)
    {
        var choices = input.Choices.IsEmpty ? $"{input.Volts}" : string.Join("; ", input.Choices);
        var form = input.Form.Value switch { SupplyForm.Direct => " DC", SupplyForm.Alternating => " AC", _ => "" };
        var polarity = label.Polarity.Value switch
        {
            Polarity.CentreNegative => ", centre negative",
            Polarity.CentrePositive => ", centre positive",
            _ => "",
        };
        return $"{choices}{form} {input.Amps?.ToString() ?? input.Watts?.ToString() ?? input.VoltAmps?.ToString()}{polarity}".Trim();
    }
}
