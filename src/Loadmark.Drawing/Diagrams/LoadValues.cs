namespace Loadmark.Drawing.Diagrams;

/// <summary>What a load gets.</summary>
/// <param name="Volts">The voltage at its plug.</param>
/// <param name="State">A word for what it does, such as "runs", "low" or "off"; null for nothing worth saying.</param>
public sealed record LoadValues(Volts Volts, string? State = null);
