using Loadmark.Core.Nameplates;

namespace Loadmark.Answers;

/// <summary>How the reading of one field of a nameplate went.</summary>
/// <typeparam name="T">What its candidates are written as.</typeparam>
/// <param name="State">How it went.</param>
/// <param name="Place">Where in the text it stands; null, or of no meaning where the field is absent, when nothing there says it.</param>
/// <param name="Candidates">What it may be where that is not clear.</param>
internal sealed record FieldResult<T>(FieldState State, Place? Place, IReadOnlyList<T> Candidates);
