using Loadmark.Core.Nameplates;

namespace Loadmark.Answers;

/// <summary>How the reading of one kind of figure went, over all modes of a nameplate.</summary>
/// <param name="State">How it went.</param>
/// <param name="Place">The smallest place in the text that holds all such figures; null when there is none.</param>
internal readonly record struct ModeFigures(FieldState State, Place? Place)
{
    /// <summary>How the reading of the voltages went.</summary>
    public static ModeFigures Volts(Nameplate nameplate) => Of(nameplate, nameplate.AmbiguousVolts, static mode => mode.VoltsPlace);

    /// <summary>How the reading of the currents went.</summary>
    public static ModeFigures Amps(Nameplate nameplate) => Of(nameplate, nameplate.AmbiguousAmps, static mode => mode.AmpsPlace);

    /// <summary>How the reading of the powers went.</summary>
    public static ModeFigures Watts(Nameplate nameplate) => Of(nameplate, nameplate.AmbiguousWatts, static mode => mode.WattsPlace);

    private static ModeFigures Of<T>(Nameplate nameplate, Field<T> unclear, Func<Mode, Place?> placeOf)
        where T : struct
    {
        if (unclear.State != FieldState.Absent)
            return new ModeFigures(unclear.State, unclear.Place);

        Place? all = null;
        foreach (var mode in nameplate.Modes.Concat(nameplate.Outlets.SelectMany(static group => group.Modes)))
        {
            if (placeOf(mode) is { } place)
                all = all?.Union(place) ?? place;
        }

        return new ModeFigures(all is null ? FieldState.Absent : FieldState.Read, all);
    }
}
