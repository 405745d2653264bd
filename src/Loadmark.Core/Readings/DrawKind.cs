namespace Loadmark.Core.Readings;

/// <summary>What a reading of a load's draw is of.</summary>
public enum DrawKind
{
    /// <summary>The current while it runs.</summary>
    Running,

    /// <summary>The current while it starts.</summary>
    Starting,
}
