using Loadmark.Workshop.Library;

namespace Loadmark.Answers;

/// <summary>A row of a file of gear.</summary>
/// <param name="Row">The row.</param>
/// <param name="IsTaken">Whether it was taken.</param>
internal sealed record TakenRow(ImportRow Row, bool IsTaken);
