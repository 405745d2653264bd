namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>A stretch of tokens that means something together.</summary>
/// <param name="Kind">What it is: a constant of <see cref="PhraseKind"/>, or the sign of its single token.</param>
/// <param name="From">Index of its first token.</param>
/// <param name="To">Index just past its last token.</param>
internal readonly record struct Phrase(char Kind, int From, int To);
