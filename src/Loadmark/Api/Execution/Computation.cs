namespace Loadmark.Api.Execution;

/// <summary>Computes an answer.</summary>
/// <param name="progress">Is told how far it has come.</param>
/// <param name="cancellation">Ends it; what it then gives is thrown away.</param>
/// <returns>The body of the answer.</returns>
internal delegate ReadOnlyMemory<byte> Computation(SolveProgress progress, CancellationToken cancellation);
