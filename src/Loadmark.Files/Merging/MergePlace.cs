namespace Loadmark.Files.Merging;

/// <summary>Where in a rig two edits can meet.</summary>
/// <param name="Part">What sort of thing it is.</param>
/// <param name="Subject">Which: <c>delay-2</c>, <c>brick/5</c>, of a feed its outlets; empty for the rig as a whole.</param>
/// <param name="Field">
/// The key as the rig file has it, such as <c>label</c>; <c>wired</c> for what feeds a load, <c>order</c> for the order of a list; empty
/// for the thing as a whole.
/// </param>
public sealed record MergePlace(MergePart Part, string Subject, string Field);
