using Loadmark.Core.Display;
using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.LeadLists;

/// <summary>One lead of a rig as wired, as who makes it needs it.</summary>
public sealed record ListedLead
{
    /// <summary>The lead's number in the list, from 1: what its labels say.</summary>
    public required int Number { get; init; }

    /// <summary>The feed that goes over it.</summary>
    public required WiredFeed Feed { get; init; }

    /// <summary>The lead's type.</summary>
    public required LeadType Type { get; init; }

    /// <summary>The stretches of cable that it is made of, from the outlet on; empty where the rig gives its resistance instead.</summary>
    public required ValueList<Metres> Stretches { get; init; }

    /// <summary>Whether a length among <see cref="Stretches"/> is the common one, for the rig gives none.</summary>
    public required bool LengthIsAssumed { get; init; }

    /// <summary>The size of each conductor; null where the rig gives the lead's resistance instead.</summary>
    public required Wire? Wire { get; init; }

    /// <summary>Whether the size of the conductors is the common one, for the rig gives none.</summary>
    public required bool WireIsAssumed { get; init; }

    /// <summary>What stands at the lead's load ends.</summary>
    public required FeedPoint Point { get; init; }

    /// <summary>The lead as the rig knows it; null for a plain one that it does not list.</summary>
    public Lead? Lead => Feed.Lead;

    /// <summary>How many plugs the lead has for loads: of a chain the free ones too.</summary>
    public int Plugs => Type == LeadType.DaisyChain ? Math.Max(Lead?.Plugs ?? 0, Feed.Loads.Length) : 1;

    /// <summary>What the lead is called: its own name, else what it is.</summary>
    public string Name => Lead?.Id ?? LeadNames.Of(Type);

    /// <summary>The plug at the outlet end.</summary>
    public Figure<Plug> OutletPlug => Feed.Outlets[0].Rating.Plug;

    /// <summary>The length of all stretches; null where the rig gives the lead's resistance instead.</summary>
    public Metres? Length
    {
        get
        {
            if (Stretches.Count == 0)
                return null;
            var sum = default(Metres);
            foreach (var stretch in Stretches)
                sum += stretch;
            return sum;
        }
    }
}
