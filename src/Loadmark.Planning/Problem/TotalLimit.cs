using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>What a supply or a bank can give in all, in amps or watts, less what pinned feeds take.</summary>
internal sealed class TotalLimit
{
    /// <summary>The supply's id.</summary>
    public required string Supply { get; init; }

    /// <summary>The bank; null for the whole supply.</summary>
    public required string? Bank { get; init; }

    /// <summary>Whether it is in watts.</summary>
    public required bool InWatts { get; init; }

    /// <summary>What is left for running draws, in millionths; not negative.</summary>
    public required long Run { get; init; }

    /// <summary>What is left for running draws before the headroom is touched; negative when pinned feeds touch it already.</summary>
    public required long Usable { get; init; }

    /// <summary>What is left for starting draws, in millionths; not negative.</summary>
    public required long Start { get; init; }

    /// <summary>Whether pinned feeds are over it already, so that headroom says nothing.</summary>
    public required bool IsOver { get; init; }

    /// <summary>By what a load's amps count against it when it is on a source; zero when the source is elsewhere.</summary>
    public decimal FactorOf(Source source)
    {
        var factor = 0m;
        foreach (var part in source.Parts)
        {
            if (part.Group.Rating.Supply.Id == Supply && (Bank is null || part.Group.Rating.Outlet.Bank == Bank))
                factor += InWatts ? part.Setting.Volts.Value : 1;
        }

        // Outlets in parallel share the current; those in series each carry all of it.
        return source.Joined == Joint.Parallel ? factor / 2 : factor;
    }
}
