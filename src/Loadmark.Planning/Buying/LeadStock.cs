using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Buying;

/// <summary>What the leads on hand allow beyond one load an outlet, less those that pinned feeds use.</summary>
internal sealed class LeadStock
{
    private readonly List<(LeadType Type, int Plugs)> _pairs = [];

    /// <summary>Counts the leads.</summary>
    /// <param name="pinned">The rig with its pinned feeds only.</param>
    /// <param name="loads">How many loads there are to feed.</param>
    public LeadStock(WiredRig pinned, int loads)
    {
        foreach (var lead in pinned.Rig.Leads)
        {
            var count = LeadsLeft.Of(lead, pinned, loads);
            var plugs = Math.Min(lead.LoadPlugs ?? loads, loads);
            HasOtherPlugs |= count > 0 && lead.Plug is not null;
            switch (lead.Type)
            {
                case LeadType.Series or LeadType.Parallel:
                    Series += lead.Type == LeadType.Series ? count * plugs : 0;
                    Parallel += lead.Type == LeadType.Parallel ? count * plugs : 0;
                    _pairs.AddRange(Enumerable.Repeat((lead.Type, plugs), count));
                    break;
                default:
                    Reversing += lead.Type == LeadType.Reversing ? count * plugs : 0;
                    Extra += count * Math.Max(0, plugs - 1);
                    MostPlugs = count > 0 ? Math.Max(MostPlugs, plugs) : MostPlugs;
                    break;
            }
        }
    }

    /// <summary>The plugs of all reversing leads.</summary>
    public int Reversing { get; }

    /// <summary>The plugs of all series leads.</summary>
    public int Series { get; }

    /// <summary>The plugs of all parallel leads.</summary>
    public int Parallel { get; }

    /// <summary>The series and parallel leads, with how many plugs each; each takes two outlets.</summary>
    public IReadOnlyList<(LeadType Type, int Plugs)> Pairs => _pairs;

    /// <summary>How many series and parallel leads there are.</summary>
    public int PairLeads => _pairs.Count;

    /// <summary>How many loads more than one an outlet all leads with several plugs can take.</summary>
    public int Extra { get; }

    /// <summary>The most plugs of one lead on one outlet.</summary>
    public int MostPlugs { get; } = 1;

    /// <summary>Whether a lead ends in a plug of its own, so that plugs of outlets do not decide.</summary>
    public bool HasOtherPlugs { get; }
}
