namespace Loadmark.Files;

/// <summary>The text of a rig file after a change of the rig.</summary>
/// <param name="Text">The text; it reads as the new rig.</param>
/// <param name="CommentsKept">
/// Whether every comment of the old text is still there, but for those within a load, outlet, feed or other entry that has been
/// taken out.
/// </param>
public sealed record RigTextUpdate(string Text, bool CommentsKept);
