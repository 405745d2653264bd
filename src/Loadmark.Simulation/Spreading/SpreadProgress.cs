namespace Loadmark.Simulation.Spreading;

/// <summary>How far sampling has come.</summary>
/// <param name="Done">Samples computed.</param>
/// <param name="Samples">Samples asked for.</param>
public sealed record SpreadProgress(int Done, int Samples);
