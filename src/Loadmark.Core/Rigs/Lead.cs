using Loadmark.Core.Gear;

namespace Loadmark.Core.Rigs;

/// <summary>A d.c. lead on hand, as the rig file has it.</summary>
public sealed record Lead
{
    /// <summary>The length of a lead that gives none; a default, shown as assumed where it counts.</summary>
    public static Metres CommonLength { get; } = new(0.5m);

    /// <summary>Between the plugs of a chain that gives no pitch; a default, shown as assumed where it counts.</summary>
    public static Metres CommonPitch { get; } = new(0.25m);

    /// <summary>The conductor of a lead that gives none; a default, shown as assumed where it counts.</summary>
    public static Wire CommonWire { get; } = Rigs.Wire.OfArea(new SquareMetres(0.22e-6m));

    /// <summary>The resistance of each mated contact where none is given; a default, shown as assumed where it counts.</summary>
    public static Ohms CommonContact { get; } = new(0.02m);

    /// <summary>The name the rig knows it by; unique among the rig's leads.</summary>
    public required string Id { get; init; }

    /// <summary>The lead's type: straight, daisy chain, reversing, series or parallel.</summary>
    public LeadType Type { get; init; }

    /// <summary>From end to end; null when not given.</summary>
    public Metres? Length { get; init; }

    /// <summary>From the supply to the first plug of a chain; null when not given.</summary>
    public Metres? Tail { get; init; }

    /// <summary>Between the plugs of a chain; null when not given.</summary>
    public Metres? Pitch { get; init; }

    /// <summary>How many loads the lead has plugs for; null when not given.</summary>
    public int? Plugs { get; init; }

    /// <summary>The conductors' size; null when not given.</summary>
    public Wire? Wire { get; init; }

    /// <summary>The resistance of each conductor, instead of length and wire; null when not given.</summary>
    public Ohms? Ohms { get; init; }

    /// <summary>The resistance of each mated contact; null when not given.</summary>
    public Ohms? ContactOhms { get; init; }

    /// <summary>The plug that the lead's load ends have, where another than the outlet's; null when not given.</summary>
    public Plug? Plug { get; init; }

    /// <summary>How many such leads there are; null when not given, which means one, or as many as are wanted of a straight one.</summary>
    public int? Count { get; init; }

    /// <summary>Whether the lead, or all of them where there are several, is yet to be bought or made: nobody has it.</summary>
    public bool ToBuy { get; init; }

    /// <summary>How many loads the lead can feed: null when a chain does not say; one for every other lead that does not.</summary>
    public int? LoadPlugs => Plugs ?? (Type == LeadType.DaisyChain ? null : 1);
}
