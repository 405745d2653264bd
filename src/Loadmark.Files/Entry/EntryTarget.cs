namespace Loadmark.Files.Entry;

/// <summary>What lines are read for.</summary>
/// <param name="Kind">What they are.</param>
/// <param name="Existing">The ids that are there already: of the rig's loads, the supply's outlets or the rig's supplies.</param>
public sealed record EntryTarget(EntryKind Kind, IReadOnlyCollection<string> Existing);
