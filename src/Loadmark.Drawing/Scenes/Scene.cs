using System.Collections.Immutable;

namespace Loadmark.Drawing.Scenes;

/// <summary>A picture as data, in px-like units, y downwards.</summary>
public sealed record Scene
{
    /// <summary>The scene's width, px.</summary>
    public required double Width { get; init; }

    /// <summary>The scene's height, px.</summary>
    public required double Height { get; init; }

    /// <summary>What the scene is a picture of.</summary>
    public required string Title { get; init; }

    /// <summary>What the scene shows, in whole sentences, for who does not see it.</summary>
    public required string Description { get; init; }

    /// <summary>The scene's parts, from the bottom up; in an order that can be read aloud.</summary>
    public required ImmutableArray<SceneGroup> Groups { get; init; }
}
