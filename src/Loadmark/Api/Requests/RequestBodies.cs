namespace Loadmark.Api.Requests;

/// <summary>The bodies of requests that are objects of JSON.</summary>
internal static class RequestBodies
{
    /// <summary>The member for labels.</summary>
    public static BodyMember Texts { get; } = new("texts", "What is printed, as it stands; one label each.") { IsList = true };

    /// <summary>The member for a rig.</summary>
    public static BodyMember Rig { get; } = new("rig", "The rig file's text.");

    /// <summary>The member for a price list.</summary>
    public static BodyMember Prices { get; } = new("prices", "The price list's text: CSV, one supply a line (docs/price-list.md).");

    /// <summary>The member for things that draw.</summary>
    public static BodyMember Loads { get; } = new("loads", "What each pedal says, a label with a name before it or without.") { IsList = true };

    /// <summary>The member for things that give.</summary>
    public static BodyMember Supplies { get; } = new(
        "supplies", "What each adaptor or supply says; left out, the answer is what would do.")
    { IsList = true, IsOptional = true };

    /// <summary>The member for a running current.</summary>
    public static BodyMember Run { get; } = new("run", "The running current: 212 mA.") { IsOptional = true };

    /// <summary>The member for a starting current.</summary>
    public static BodyMember Start { get; } = new(
        "start", "The starting current, and how long it lasted: 520 mA for 1.5 s.")
    { IsOptional = true };

    /// <summary>The member for a meter's accuracy.</summary>
    public static BodyMember Meter { get; } = new(
        "meter", "The meter's accuracy, as its leaflet tells it: 1 % + 2 mA.")
    { IsOptional = true };

    /// <summary>The member for a remark.</summary>
    public static BodyMember Note { get; } = new("note", "What else there is to say.") { IsOptional = true };

    /// <summary>Labels that are to be read.</summary>
    public static BodyShape TextsToRead { get; } = new("TextsToRead", "Labels to read.", [Texts]);

    /// <summary>What purchases are chosen for and from.</summary>
    public static BodyShape RigAndPrices { get; } = new("RigAndPrices", "A rig and a price list.", [Rig, Prices]);

    /// <summary>A reading of a load.</summary>
    public static BodyShape WhatTheMeterShowed { get; } = new(
        "WhatTheMeterShowed", "What a meter showed of a load: run or start, or both.", [Run, Start, Meter, Note]);

    /// <summary>What is to be plugged in, and into what.</summary>
    public static BodyShape WhatToPlugIn { get; } = new("WhatToPlugIn", "What is to be plugged in, and into what.", [Loads, Supplies]);

    /// <summary>All of them, for the description.</summary>
    public static IReadOnlyList<BodyShape> All { get; } = [TextsToRead, WhatToPlugIn, RigAndPrices, WhatTheMeterShowed];
}
