namespace Loadmark.Core.Rigs;

/// <summary>Outlets, the mode they are set to, the lead, and the loads on it.</summary>
public sealed record Feed
{
    /// <summary>The outlets the feed takes from, at least one.</summary>
    public required ValueList<OutletRef> From { get; init; }

    /// <summary>How the outlets are joined; none exactly when there is one.</summary>
    public Joint Joined { get; init; }

    /// <summary>
    /// The voltage each outlet is set to: empty when not given, one for all outlets, or one for each in their order.
    /// </summary>
    public ValueList<Volts> At { get; init; }

    /// <summary>The id of the lead; null for a plain one that need not be listed.</summary>
    public string? Lead { get; init; }

    /// <summary>The ids of the loads, at least one, in the order of the lead's plugs.</summary>
    public required ValueList<string> To { get; init; }

    /// <summary>Whether a plan must leave the feed as it is.</summary>
    public bool Pinned { get; init; }

    /// <summary>The outlet's setting at <paramref name="index"/> of <see cref="From"/>; null when not given.</summary>
    public Volts? SettingOf(int index) => At.Count switch
    {
        0 => null,
        1 => At[0],
        _ => At[index],
    };
}
