using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Buying;

/// <summary>What leads allow beyond one load an outlet over a plain lead.</summary>
internal sealed class LeadStock
{
    private readonly List<(LeadType Type, int Plugs, LeadEnds Ends)> _pairs = [];
    private readonly HashSet<LeadEnds> _ends = [LeadEnds.Plain];

    /// <summary>Counts the leads.</summary>
    /// <param name="leads">The leads, each with how many of it there are.</param>
    /// <param name="loads">How many loads there are to feed.</param>
    public LeadStock(IEnumerable<(Lead Lead, int Count)> leads, int loads)
    {
        foreach (var (lead, count) in leads)
        {
            var plugs = Math.Min(lead.LoadPlugs ?? loads, loads);
            var ends = EndsOf(lead);
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
                    Adapting += ends == LeadEnds.Plain ? 0 : count * plugs;
                    Extra += count * Math.Max(0, plugs - 1);
                    MostPlugs = count > 0 ? Math.Max(MostPlugs, plugs) : MostPlugs;
                    break;
            }
        }
    }

    /// <summary>The plugs of all reversing leads.</summary>
    public int Reversing { get; }

    /// <summary>The plugs of all leads for one outlet that change the polarity or the plug.</summary>
    public int Adapting { get; }

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

    /// <summary>What a lead does to polarity and plug.</summary>
    public static LeadEnds EndsOf(Lead lead) => new(lead.Type == LeadType.Reversing, lead.Plug);
}
