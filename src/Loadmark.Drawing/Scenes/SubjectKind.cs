namespace Loadmark.Drawing.Scenes;

/// <summary>What a part of a picture shows.</summary>
public enum SubjectKind
{
    /// <summary>Headings, keys, axes: nothing to point at.</summary>
    Decoration,

    /// <summary>The mains where the rig is played.</summary>
    Mains,

    /// <summary>A supply of the rig.</summary>
    Supply,

    /// <summary>An outlet of a supply.</summary>
    Outlet,

    /// <summary>The lead of a feed.</summary>
    Lead,

    /// <summary>A load of the rig.</summary>
    Load,

    /// <summary>A line of a plot.</summary>
    Series,
}
