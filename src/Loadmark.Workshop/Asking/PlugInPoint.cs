namespace Loadmark.Workshop.Asking;

/// <summary>One aspect with how it stands and why.</summary>
/// <param name="Aspect">Which.</param>
/// <param name="State">How it stands.</param>
/// <param name="Working">The reason with its arithmetic, in a sentence or two that a player understands.</param>
public sealed record PlugInPoint(PlugInAspect Aspect, PointState State, string Working);
