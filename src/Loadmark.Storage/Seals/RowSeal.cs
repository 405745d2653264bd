namespace Loadmark.Storage.Seals;

/// <summary>A row's seal.</summary>
/// <param name="Row">The row's number within its table.</param>
/// <param name="Kept">The seal that it has.</param>
/// <param name="Right">The seal that its values come to.</param>
/// <param name="IsWhole">Whether they are the same.</param>
internal readonly record struct RowSeal(long Row, long Kept, long Right, bool IsWhole);
