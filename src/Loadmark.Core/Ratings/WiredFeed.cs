using System.Collections.Immutable;
using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Ratings;

/// <summary>A feed of a rig with its outlets, lead and loads looked up and its voltage worked out.</summary>
public sealed class WiredFeed
{
    private const int MostNamed = 12;

    private decimal? _limits;
    private string? _outletNames;
    private string? _voltsText;

    internal WiredFeed(Feed feed, int index, ImmutableArray<WiredOutlet> outlets, Lead? lead, ImmutableArray<WiredLoad> loads)
    {
        Feed = feed;
        Index = index;
        Outlets = outlets;
        Lead = lead;
        Loads = loads;
    }

    /// <summary>The feed as the rig file has it.</summary>
    public Feed Feed { get; }

    /// <summary>The feed's place in the wiring, from 0.</summary>
    public int Index { get; }

    /// <summary>The outlets the feed takes from, at least one.</summary>
    public ImmutableArray<WiredOutlet> Outlets { get; }

    /// <summary>The listed lead; null for a plain one.</summary>
    public Lead? Lead { get; }

    /// <summary>The loads on the feed, at least one.</summary>
    public ImmutableArray<WiredLoad> Loads { get; }

    /// <summary>How the feed's outlets are joined.</summary>
    public Joint Joined => Feed.Joined;

    /// <summary>Whether the feed's lead exchanges centre and sleeve.</summary>
    public bool Reverses => Lead?.Type == LeadType.Reversing;

    /// <summary>
    /// Its nominal voltage: the outlet's, the sum for outlets in series, the first's for outlets in parallel. Null when
    /// an outlet's voltage is not known.
    /// </summary>
    public Volts? Volts
    {
        get
        {
            if (Joined != Joint.Series)
                return Outlets[0].Volts;

            var sum = Quantity<Volt>.Zero;
            foreach (var outlet in Outlets)
            {
                if (outlet.Volts is not { } volts)
                    return null;
                sum += volts;
            }

            return sum;
        }
    }

    /// <summary>The voltage in words, with the sum for outlets in series: "9 V + 9 V = 18 V".</summary>
    public string VoltsText => _voltsText ??= Joined == Joint.Series
        ? $"{Row(Outlets.Select(outlet => FigureDisplay.Printed(outlet.Volts)))} = {FigureDisplay.Printed(Volts)}"
        : FigureDisplay.Printed(Volts);

    /// <summary>
    /// Direct or alternating current: alternating where any joined outlet is known to be, not known where that of any is not known, else
    /// its first outlet's.
    /// </summary>
    public Figure<SupplyForm> Form
    {
        get
        {
            Figure<SupplyForm>? unknown = null;
            foreach (var outlet in Outlets)
            {
                if (!outlet.Rating.Form.IsKnown)
                    unknown = outlet.Rating.Form;
                else if (outlet.Rating.Form.Value == SupplyForm.Alternating)
                    return outlet.Rating.Form;
            }

            return unknown ?? Outlets[0].Rating.Form;
        }
    }

    /// <summary>The polarity at the feed's plugs: its first outlet's, exchanged by a reversing lead.</summary>
    public Polarity PolarityAtPlug
    {
        get
        {
            var polarity = Outlets[0].Rating.Polarity.Value;
            if (!Reverses)
                return polarity;
            return polarity == Polarity.CentreNegative ? Polarity.CentrePositive : Polarity.CentreNegative;
        }
    }

    /// <summary>
    /// The share of the feed's current that one of its outlets carries: the whole of it alone or in series; in parallel by
    /// its limit, or equal shares where a limit is not known.
    /// </summary>
    public decimal ShareOf(WiredOutlet outlet)
    {
        if (Joined != Joint.Parallel)
            return 1;

        var sum = _limits ??= SumOfLimits();
        return sum > 0 && outlet.Limit is { } limit ? limit.Value.Value / sum : 1m / Outlets.Length;
    }

    /// <summary>The plug at the feed's load ends: the lead's where that is given, else its first outlet's.</summary>
    public Figure<Plug> Plug => Lead?.Plug is { } plug ? new Figure<Plug>(plug, Origin.Stated) : Outlets[0].Rating.Plug;

    /// <summary>The outlets' names, joined: "brick/2 + brick/3".</summary>
    public string OutletNames => _outletNames ??= Outlets.Length == 1 ? Outlets[0].Name : Row(Outlets.Select(outlet => outlet.Name));

    private string Row(IEnumerable<string> terms) =>
        string.Join(" + ", terms.Take(MostNamed)) + (Outlets.Length > MostNamed ? $" + {Outlets.Length - MostNamed} more" : "");

    private decimal SumOfLimits()
    {
        var sum = 0m;
        foreach (var outlet in Outlets)
        {
            if (outlet.Limit is not { } limit)
                return 0;
            sum += limit.Value.Value;
        }

        return sum;
    }
}
