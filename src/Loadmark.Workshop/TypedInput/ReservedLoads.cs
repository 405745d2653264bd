using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.TypedInput;

/// <summary>The labels of loads to come, which capacity is to be reserved for.</summary>
public static class ReservedLoads
{
    /// <summary>Reads the labels of loads to come.</summary>
    /// <param name="texts">The labels as typed.</param>
    /// <param name="complaint">What is wrong with one, as a sentence; null where nothing is.</param>
    /// <returns>The nameplates; null where one does not tell a voltage and a current.</returns>
    public static ValueList<Nameplate>? Read(IEnumerable<string> texts, out string? complaint)
    {
        var plates = texts.Select(NameplateReader.Read).ToList();
        var vague = plates.Find(static plate => !plate.Modes.Any(static mode => mode is { Volts: not null, Amps: not null }));
        complaint = vague is null ? null : $"'{vague.Text}' does not tell a voltage and a current, such as \"9 V 300 mA\".";
        return vague is null ? [.. plates] : null;
    }
}
