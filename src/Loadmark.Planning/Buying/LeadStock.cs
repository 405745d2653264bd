using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Buying;

/// <summary>What the leads on hand allow beyond one load an outlet, less those that pinned feeds use.</summary>
internal sealed class LeadStock
{
    private readonly List<(LeadType Type, int Plugs, LeadEnds Ends)> _pairs = [];
    private readonly HashSet<LeadEnds> _ends = [LeadEnds.Plain];

    /// <summary>Counts the leads.</summary>
    /// <param name="pinned">The rig with its pinned feeds only.</param>
    /// <param name="loads">How many loads there are to feed.</param>
    public LeadStock(WiredRig pinned, int loads)
    {
        foreach (var lead in pinned.Rig.Leads)
        {
            var count = LeadsLeft.Of(lead, pinned, loads);
            var plugs = Math.Min(lead.LoadPlugs ?? loads, loads);
            var ends = new LeadEnds(lead.Type == LeadType.Reversing, lead.Plug);
            switch (lead.Type)
            {
                case LeadType.Series or LeadType.Parallel:
                    Series += lead.Type == LeadType.Series ? count * plugs : 0;
                    Parallel += lead.Type == LeadType.Parallel ? count * plugs : 0;
                    _pairs.AddRange(Enumerable.Repeat((lead.Type, plugs, ends), count));
                    break;
                default:
                    if (count > 0)
                        _ends.Add(ends);
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
    public IReadOnlyList<(LeadType Type, int Plugs, LeadEnds Ends)> Pairs => _pairs;

    /// <summary>How many series and parallel leads there are.</summary>
    public int PairLeads => _pairs.Count;

    /// <summary>How many loads more than one an outlet all leads with several plugs can take.</summary>
    public int Extra { get; }

    /// <summary>The most plugs of one lead on one outlet.</summary>
    public int MostPlugs { get; } = 1;

    /// <summary>What the leads for one outlet do to polarity and plug, nothing among it.</summary>
    public IReadOnlyCollection<LeadEnds> Ends => _ends;
}
