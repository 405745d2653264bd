namespace Loadmark.Core.Ratings;

/// <summary>A rig made in code that repeats an id, refers to what it does not have, or sets what cannot be set.</summary>
/// <param name="message">What does not hold.</param>
public sealed class InvalidRigException(string message) : ArgumentException(message);
