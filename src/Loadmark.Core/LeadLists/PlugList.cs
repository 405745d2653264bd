using Loadmark.Core.Rigs;
using Loadmark.Core.Texts;

namespace Loadmark.Core.LeadLists;

/// <summary>The plugs of a rig that feed its loads, and what people call them.</summary>
public sealed class PlugList
{
    /// <summary>Stands in <see cref="_byAlias"/> for what several plugs are called.</summary>
    private const int Several = -1;

    private readonly Dictionary<string, int> _byAlias = new(StringComparer.OrdinalIgnoreCase);

    private PlugList(ValueList<PlugPlace> plugs)
    {
        Plugs = plugs;
        for (var index = 0; index < plugs.Count; index++)
            Call(plugs[index].Name, index);
        for (var index = 0; index < plugs.Count; index++)
            CallOtherwise(index);
    }

    /// <summary>The plugs in the order of the lead list.</summary>
    public ValueList<PlugPlace> Plugs { get; }

    /// <summary>Lists the plugs.</summary>
    /// <param name="leads">The leads of the rig.</param>
    public static PlugList Of(ValueList<ListedLead> leads)
    {
        var plugs = new List<PlugPlace>();
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var lead in leads)
        {
            for (var place = 1; place <= lead.Feed.Loads.Length; place++)
            {
                // Two leads in one outlet is a fault of the rig, and still each plug has a name of its own.
                var name = $"{lead.Feed.OutletNames} plug {place}";
                if (!taken.Add(name))
                    taken.Add(name += $" of lead {lead.Number}");
                plugs.Add(new PlugPlace(name, lead, place, lead.Feed.Loads[place - 1]));
            }
        }

        return new PlugList([.. plugs]);
    }

    /// <summary>
    /// The plug that is meant by what somebody called it: its name, its load's id, its lead's number ("lead 3", "lead 3 plug 2"), or its
    /// outlet where that has one plug only; in any case.
    /// </summary>
    /// <param name="typed">What it was called.</param>
    /// <param name="problem">Why no plug is meant, as the end of a sentence; null where one is.</param>
    public PlugPlace? Find(string typed, out string? problem)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var name = Plain(typed);
        if (!_byAlias.TryGetValue(name, out var index))
        {
            var near = NearestWord.Find(name, _byAlias.Keys);
            problem = near is null ? "no plug of the rig is called so" : $"no plug of the rig is called so; did you mean '{near}'?";
            return null;
        }

        problem = index == Several ? $"several plugs are called so; name one of them, as in '{Plugs[0].Name}'" : null;
        return index == Several ? null : Plugs[index];
    }

    private static string Plain(string typed) => string.Join(' ', typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private void CallOtherwise(int index)
    {
        var plug = Plugs[index];
        Call(plug.Load.Id, index);
        Call($"lead {plug.Lead.Number} plug {plug.Place}", index);
        Call($"lead {plug.Lead.Number}", index);
        Call(plug.Lead.Feed.OutletNames, index);
    }

    private void Call(string name, int index)
    {
        if (!_byAlias.TryAdd(Plain(name), index) && _byAlias[Plain(name)] != index)
            _byAlias[Plain(name)] = Several;
    }
}
