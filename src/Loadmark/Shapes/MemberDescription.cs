namespace Loadmark.Shapes;

/// <summary>What is told of a member of an object of JSON.</summary>
/// <param name="Name">The member's name, the key.</param>
/// <param name="Value">What its value is.</param>
/// <param name="IsRequired">Whether it always stands there.</param>
internal sealed record MemberDescription(string Name, ValueDescription Value, bool IsRequired);
