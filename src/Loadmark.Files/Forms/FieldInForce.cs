using Loadmark.Core.Gear;

namespace Loadmark.Files.Forms;

/// <summary>What holds for a field in which nothing is typed.</summary>
/// <param name="Text">The value, as it would be typed.</param>
/// <param name="Origin">Where it came from: the label, something derived, or what is assumed.</param>
public sealed record FieldInForce(string Text, Origin Origin);
