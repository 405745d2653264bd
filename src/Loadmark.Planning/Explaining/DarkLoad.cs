namespace Loadmark.Planning.Explaining;

/// <summary>A load that a plan does not feed, with the outlet that would do for it.</summary>
/// <param name="Load">The load's tag.</param>
/// <param name="Outlet">
/// The outlet in words, such as "9 V 300 mA": with the rig's headroom, and what one would not take for granted.
/// </param>
public sealed record DarkLoad(string Load, string Outlet);
