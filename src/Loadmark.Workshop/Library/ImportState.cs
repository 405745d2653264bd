namespace Loadmark.Workshop.Library;

/// <summary>What a piece of gear that is to be taken into the library is to it.</summary>
public enum ImportState
{
    /// <summary>The library has none of that tag.</summary>
    New,

    /// <summary>The library says all of it already.</summary>
    Same,

    /// <summary>The library says something else of it, which is not changed unless somebody says so.</summary>
    Differs,

    /// <summary>The piece cannot be taken.</summary>
    Refused,
}
