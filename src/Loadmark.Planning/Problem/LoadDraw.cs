namespace Loadmark.Planning.Problem;

/// <summary>What a load draws at one voltage.</summary>
/// <param name="Run">While it runs, in amps; zero when nothing tells.</param>
/// <param name="Start">While it starts, in amps; zero when nothing tells.</param>
internal readonly record struct LoadDraw(decimal Run, decimal Start);
