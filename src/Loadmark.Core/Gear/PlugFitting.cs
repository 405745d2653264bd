namespace Loadmark.Core.Gear;

/// <summary>Tells how plugs suit jacks.</summary>
public static class PlugFitting
{
    /// <summary>
    /// Equal sizes fit. A plug bored for a 2.5 mm pin goes over one of 2.1 mm but holds badly; the other way about the
    /// pin is too thick (sizes from IEC 60130-10 type A; that it holds badly is common practice, no source).
    /// </summary>
    /// <param name="plug">The plug at the end of the lead.</param>
    /// <param name="jack">The plug that the load's jack is made for.</param>
    public static PlugFit Judge(Plug plug, Plug jack)
    {
        if (plug == jack)
            return PlugFit.Good;
        return plug == Plug.WidePin && jack == Plug.Common ? PlugFit.Loose : PlugFit.None;
    }
}
