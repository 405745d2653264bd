namespace Loadmark.Drawing.Diagrams;

/// <summary>What an outlet does.</summary>
/// <param name="Amps">The current it gives.</param>
/// <param name="State">A word for what it does besides, such as "limiting"; null for nothing worth saying.</param>
public sealed record OutletValues(Amps Amps, string? State = null);
