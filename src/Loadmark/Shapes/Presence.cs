namespace Loadmark.Shapes;

/// <summary>What an object of JSON has where a member's value is not there.</summary>
internal enum Presence
{
    /// <summary>The value is always there.</summary>
    Always,

    /// <summary>The member stands there, and is null.</summary>
    OrNull,

    /// <summary>The member does not stand there.</summary>
    OrAbsent,
}
