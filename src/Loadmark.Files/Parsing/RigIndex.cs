using Loadmark.Core.Rigs;
using Loadmark.Core.Texts;

namespace Loadmark.Files.Parsing;

/// <summary>What a rig's wiring may refer to, by id.</summary>
internal sealed class RigIndex
{
    private readonly HashSet<string> _loads;
    private readonly Dictionary<string, Lead> _leads;
    private readonly Dictionary<string, Supply> _supplies;
    private readonly Dictionary<OutletRef, Outlet> _outlets = [];

    /// <summary>Indexes gear whose ids are each there once.</summary>
    public RigIndex(List<Load> loads, List<Supply> supplies, List<Lead> leads)
    {
        // A supply that is fed by another is wired by its own name, as a load is.
        _loads = loads.Select(load => load.Id)
            .Concat(supplies.Where(static supply => supply.Label?.Input is not null).Select(static supply => supply.Id))
            .ToHashSet(StringComparer.Ordinal);
        _leads = leads.ToDictionary(lead => lead.Id, StringComparer.Ordinal);
        _supplies = supplies.ToDictionary(supply => supply.Id, StringComparer.Ordinal);
        foreach (var supply in supplies)
        {
            foreach (var outlet in supply.Outlets)
                _outlets.Add(new OutletRef(supply.Id, outlet.Id), outlet);
        }
    }

    public bool HasLoad(string id) => _loads.Contains(id);

    public bool HasLead(string id) => _leads.ContainsKey(id);

    public Supply? FindSupply(string id) => _supplies.GetValueOrDefault(id);

    public Outlet? FindOutlet(OutletRef reference) => _outlets.GetValueOrDefault(reference);

    public string? NearestLoad(string id) => NearestWord.Find(id, _loads);

    public string? NearestLead(string id) => NearestWord.Find(id, _leads.Keys);

    public string? NearestSupply(string id) => NearestWord.Find(id, _supplies.Keys);

    /// <summary>The outlet whose full name is nearest, else null.</summary>
    public string? NearestOutlet(string text) => NearestWord.Find(text, _outlets.Keys.Select(outlet => outlet.ToString()));
}
