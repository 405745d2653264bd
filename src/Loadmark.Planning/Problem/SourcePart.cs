namespace Loadmark.Planning.Problem;

/// <summary>One outlet of a group, set to a voltage.</summary>
/// <param name="Group">The outlet's group.</param>
/// <param name="Setting">The voltage it is set to.</param>
internal sealed record SourcePart(OutletGroup Group, Setting Setting);
