using Loadmark.Core.Gear;

namespace Loadmark.Storage.Entities;

/// <summary>That a rig has a piece of gear. Found again from the rig's text at each save.</summary>
internal sealed class GearUseRow : SealedRow
{
    public Guid RigId { get; set; }

    public GearKind Kind { get; set; }

    public string TagKey { get; set; } = "";
}
