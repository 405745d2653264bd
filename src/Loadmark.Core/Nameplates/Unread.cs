namespace Loadmark.Core.Nameplates;

/// <summary>A piece of a nameplate that was not understood. It is handed back, never dropped.</summary>
/// <param name="Text">The piece as it stands.</param>
/// <param name="Place">Where it stands.</param>
public readonly record struct Unread(string Text, Place Place);
