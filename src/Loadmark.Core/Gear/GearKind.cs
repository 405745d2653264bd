namespace Loadmark.Core.Gear;

/// <summary>What sort of thing a piece of gear is, as a rig file has them apart.</summary>
public enum GearKind
{
    /// <summary>A load: something that draws.</summary>
    Load,

    /// <summary>A power unit with its outlets.</summary>
    Supply,

    /// <summary>A d.c. lead.</summary>
    Lead,
}
