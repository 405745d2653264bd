using Loadmark.Core.Gear;

namespace Loadmark.Files.Entry;

/// <summary>What lines are read for.</summary>
/// <param name="Kind">What they are.</param>
/// <param name="Existing">The ids that are there already: of the rig's loads, the supply's outlets or the rig's supplies.</param>
public sealed record EntryTarget(EntryKind Kind, IReadOnlyCollection<string> Existing)
{
    /// <summary>
    /// Keys of tags (<see cref="GearTag.KeyOf"/>) that gear of this kind has elsewhere, in other rigs or in the library: none of them is
    /// proposed, since unrelated gear would pass for one piece. A tag that is typed may be among them.
    /// </summary>
    public IReadOnlySet<string> Elsewhere { get; init; } = new HashSet<string>();
}
