using System.Collections.Frozen;

namespace Loadmark.Drawing.Diagrams;

/// <summary>What a rig's outlets and loads do, from the steady state, a moment of the start-up, or a meter.</summary>
public sealed record DiagramValues
{
    /// <summary>By outlet (<c>brick/5</c>); those without show the draw that the rig gives.</summary>
    public IReadOnlyDictionary<string, OutletValues> Outlets { get; init; } = FrozenDictionary<string, OutletValues>.Empty;

    /// <summary>What each load gets, by its tag (<c>delay-2</c>).</summary>
    public IReadOnlyDictionary<string, LoadValues> Loads { get; init; } = FrozenDictionary<string, LoadValues>.Empty;
}
