namespace Loadmark.Circuits.Networks;

/// <summary>The place of one figure of one device in a network; good for the network that gave it and for its copies.</summary>
/// <param name="Index">Place in the table of figures.</param>
public readonly record struct ParameterSlot(int Index);
