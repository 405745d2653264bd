namespace Loadmark.Simulation.Starting;

/// <summary>Something that happens while a rig starts.</summary>
/// <param name="Time">When, after switch-on.</param>
/// <param name="Subject">The load or the outlet.</param>
/// <param name="Kind">What happens.</param>
/// <param name="Volts">The voltage of the load or the outlet at that moment.</param>
/// <param name="Text">The same in plain words, as a sentence.</param>
public sealed record StartUpEvent(Seconds Time, string Subject, StartUpEventKind Kind, Volts? Volts, string Text);
