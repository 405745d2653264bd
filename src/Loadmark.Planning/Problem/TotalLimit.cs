namespace Loadmark.Planning.Problem;

/// <summary>What a supply or a bank can give in all, in amps or watts, less what pinned feeds take.</summary>
internal sealed class TotalLimit
{
    /// <summary>The supply's id.</summary>
    public required string Supply { get; init; }

    /// <summary>The bank; null for the whole supply.</summary>
    public required string? Bank { get; init; }

    /// <summary>Whether the limit is in watts.</summary>
    public required bool InWatts { get; init; }

    /// <summary>What is left for running draws, in millionths; not negative.</summary>
    public required long Run { get; init; }

    /// <summary>What is left for running draws before the headroom is touched; negative when pinned feeds touch it already.</summary>
    public required long Usable { get; init; }

    /// <summary>What is left for starting draws, in millionths; not negative.</summary>
    public required long Start { get; init; }

    /// <summary>Whether pinned feeds are over the limit already, so that headroom says nothing.</summary>
    public required bool IsOver { get; init; }

    /// <summary>So many such limits taken together.</summary>
    public TotalLimit Times(int count) => new()
    {
        Supply = Supply,
        Bank = Bank,
        InWatts = InWatts,
        Run = Run * count,
        Usable = Usable * count,
        Start = Start * count,
        IsOver = IsOver,
    };

    /// <summary>Whether an outlet counts against the limit.</summary>
    public bool Covers(OutletGroup group) => group.Rating.Supply.Id == Supply && (Bank is null || group.Rating.Outlet.Bank == Bank);

    /// <summary>By what the amps of an outlet are multiplied.</summary>
    /// <param name="volts">The voltage the outlet is set to.</param>
    public decimal FactorAt(Volts volts) => InWatts ? volts.Value : 1;
}
