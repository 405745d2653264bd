namespace Loadmark.Drawing.Texts;

/// <summary>A piece of text on its line.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="At">Where it begins, from the beginning of the line.</param>
/// <param name="Text">The piece's text, shortened to its width.</param>
internal readonly record struct PlacedPiece(TextPiece Piece, double At, string Text);
