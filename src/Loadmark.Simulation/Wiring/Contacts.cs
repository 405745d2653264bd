using Loadmark.Core.Gear;

namespace Loadmark.Simulation.Wiring;

/// <summary>The two contacts of a coaxial plug or jack as nodes.</summary>
/// <param name="Centre">Node of the centre contact.</param>
/// <param name="Sleeve">Node of the sleeve.</param>
internal readonly record struct Contacts(string Centre, string Sleeve)
{
    /// <summary>The contacts of something whose poles are known.</summary>
    public static Contacts Of(Terminals terminals, Polarity polarity) => polarity == Polarity.CentreNegative
        ? new Contacts(terminals.Minus, terminals.Plus)
        : new Contacts(terminals.Plus, terminals.Minus);

    /// <summary>The same with centre and sleeve exchanged, as a reversing lead has it.</summary>
    public Contacts Reversed => new(Sleeve, Centre);

    /// <summary>What something of that polarity takes for its poles.</summary>
    public Terminals As(Polarity polarity) =>
        polarity == Polarity.CentreNegative ? new Terminals(Sleeve, Centre) : new Terminals(Centre, Sleeve);
}
