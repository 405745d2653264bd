namespace Loadmark.Planning.Cutting;

/// <summary>One piece of wire that is to be cut from a reel.</summary>
/// <param name="Id">What the piece is called; several may have one name.</param>
/// <param name="Length">
/// Its length as it is cut, over zero. What stripping and soldering at its ends take up is in it: that depends on the lead and its plugs,
/// so whoever asks adds it. So do conductors: a lead of two is two pieces, or one of a cable that has two.
/// </param>
public sealed record CutPiece(string Id, Metres Length);
