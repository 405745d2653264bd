namespace Loadmark.Storage.Gear;

/// <summary>One of several changes that are made together: the adding of a piece, or the changing of one.</summary>
/// <param name="Id">The piece to change; null to add one.</param>
/// <param name="Revision">The revision that the change started from; of no account when a piece is added.</param>
/// <param name="Content">What is to be said of it.</param>
/// <param name="What">What the change does, for people.</param>
public sealed record GearStep(Guid? Id, long Revision, GearContent Content, string What);
