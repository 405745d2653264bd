using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.Sessions;

/// <summary>A rig with other leads and another headroom, to see what becomes of it.</summary>
/// <param name="Lead">The lead that is changed; null for all plain ones.</param>
/// <param name="Metres">Its length, m; null as it is.</param>
/// <param name="Wire">Its wire, as the rig file writes it; null as it is.</param>
/// <param name="Percent">The headroom, %; null as it is.</param>
public sealed record LeadTrial(string? Lead, double? Metres, string? Wire, int? Percent)
{
    /// <summary>The name that plain leads get when their length or wire is no longer the common one.</summary>
    public const string PlainName = "plain lead";

    /// <summary>Whether the trial changes nothing.</summary>
    public bool IsNothing => Metres is null && Wire is null && Percent is null;

    /// <summary>The rig with the trial's leads and headroom.</summary>
    /// <param name="rig">The rig as it is.</param>
    public Rig Apply(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        if (Percent is { } percent)
            rig = rig with { Headroom = percent / 100m };
        if (Metres is null && Wire is null)
            return rig;
        if (Lead is { } id)
            return rig with { Leads = [.. rig.Leads.Items.Select(lead => lead.Id == id ? Changed(lead) : lead)] };

        // Another sort of lead may bear the name.
        var name = PlainName;
        while (rig.Leads.Items.Any(lead => lead.Id == name && lead.Type != LeadType.Straight))
            name += "+";
        var plain = rig.Leads.Items.FirstOrDefault(lead => lead.Id == name);
        var leads = plain is null ? rig.Leads.Items.Add(Changed(new Lead { Id = name })) : rig.Leads.Items.Replace(plain, Changed(plain));
        return rig with
        {
            Leads = new ValueList<Lead>(leads),
            Wired = rig.Wired is { } wired
                ? [.. wired.Items.Select(feed => feed is { Lead: null, From.Count: 1, To.Count: 1 } ? feed with { Lead = name } : feed)]
                : null,
        };
    }

    private Lead Changed(Lead lead)
    {
        if (Metres is { } metres)
        {
            var length = new Quantity<Metre>(Math.Round((decimal)metres, 2));
            lead = lead.Type == LeadType.DaisyChain ? lead with { Tail = length } : lead with { Length = length, Ohms = null };
        }

        if (Wire is { } wire && QuantityReader.TryRead<SquareMetre>(wire, out var area, out _))
            lead = lead with { Wire = Core.Rigs.Wire.OfArea(area), Ohms = null };
        return lead;
    }
}
