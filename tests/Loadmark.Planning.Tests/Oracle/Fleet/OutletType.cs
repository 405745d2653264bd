namespace Loadmark.Planning.Tests.Oracle.Fleet;

/// <summary>One outlet of a sort of supply.</summary>
/// <param name="Modes">Its settings: the lowest and the highest voltage and the milliamps.</param>
internal sealed record OutletType(params (decimal Low, decimal High, int Milliamps)[] Modes)
{
    /// <summary>Whether it gives alternating current.</summary>
    public bool IsAlternating { get; init; }

    /// <summary>Whether its plug is the wider one.</summary>
    public bool HasWidePlug { get; init; }

    /// <summary>More keys of the outlet in the rig file: surge, no-load voltage.</summary>
    public string More { get; init; } = "";

    /// <summary>An outlet of one voltage.</summary>
    public static OutletType Of(decimal volts, int milliamps) => new((volts, volts, milliamps));

    /// <summary>Several outlets that are alike.</summary>
    public static IEnumerable<OutletType> Of(int count, decimal volts, int milliamps) => Enumerable.Repeat(Of(volts, milliamps), count);

    /// <summary>Several outlets with a switch for 9, 12 and 18 V.</summary>
    public static IEnumerable<OutletType> Switched(int count, int atNine, int atTwelve, int atEighteen) =>
        Enumerable.Repeat(new OutletType((9, 9, atNine), (12, 12, atTwelve), (18, 18, atEighteen)), count);
}
