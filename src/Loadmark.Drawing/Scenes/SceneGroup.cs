using System.Collections.Immutable;
using Loadmark.Core.Checks;

namespace Loadmark.Drawing.Scenes;

/// <summary>All shapes of one thing in a picture.</summary>
public sealed record SceneGroup
{
    /// <summary>Unique in its scene and the same in every scene of the rig: "outlet brick/5".</summary>
    public required string Key { get; init; }

    /// <summary>The sort of thing that the group shows.</summary>
    public required SubjectKind Kind { get; init; }

    /// <summary>The id that findings name it by: "brick/5", "delay-2", "brick", the id of a lead. Empty for what has none.</summary>
    public string Subject { get; init; } = "";

    /// <summary>What the group is and how it stands, as a sentence for who does not see it; empty for decoration.</summary>
    public string Title { get; init; } = "";

    /// <summary>The worst finding about it; null when there is none.</summary>
    public Severity? Severity { get; init; }

    /// <summary>What the group is drawn with, from the bottom up.</summary>
    public required ImmutableArray<Shape> Shapes { get; init; }

    /// <summary>Where pointing at the group hits it.</summary>
    public required Box Bounds { get; init; }
}
