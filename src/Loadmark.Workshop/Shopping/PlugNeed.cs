namespace Loadmark.Workshop.Shopping;

/// <summary>Plugs of one kind that the leads to make take.</summary>
/// <param name="Name">The plug's name; null where it is not known which plug it is.</param>
/// <param name="Count">How many.</param>
/// <param name="Assumed">Of how many of them the kind is assumed.</param>
public sealed record PlugNeed(string? Name, int Count, int Assumed);
