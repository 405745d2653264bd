namespace Loadmark.Core.Readings;

/// <summary>What a reading of a load's draw is of.</summary>
public enum DrawKind
{
    /// <summary>The current while the load runs.</summary>
    Running,

    /// <summary>The current while the load starts.</summary>
    Starting,
}
