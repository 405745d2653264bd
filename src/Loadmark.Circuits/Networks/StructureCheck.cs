using System.Collections.Immutable;
using Loadmark.Circuits.Devices;

namespace Loadmark.Circuits.Networks;

/// <summary>Finds what would make the equations singular, and names it, before they are set up.</summary>
internal static class StructureCheck
{
    public static ImmutableArray<StructuralFault> Check(Netlist netlist) =>
        [.. Names(netlist), .. Figures(netlist), .. VoltageSourceLoops(netlist), .. Islands(netlist)];

    private static IEnumerable<StructuralFault> Names(Netlist netlist)
    {
        foreach (var group in netlist.Devices.GroupBy(device => device.Name).Where(group => group.Count() > 1))
            yield return new(StructuralFaultKind.Name, [group.Key], [], $"{group.Count()} devices are called {group.Key}.");
        foreach (var device in netlist.Devices)
        {
            if (string.IsNullOrWhiteSpace(device.Name) || string.IsNullOrWhiteSpace(device.Plus) || string.IsNullOrWhiteSpace(device.Minus))
                yield return new(
                    StructuralFaultKind.Name, [device.Name], [], $"The device \"{device.Name}\" or one of its nodes has no name.");
        }
    }

    private static IEnumerable<StructuralFault> Figures(Netlist netlist) =>
        from device in netlist.Devices
        from figure in FigureCheck.FaultsOf(device)
        select new StructuralFault(StructuralFaultKind.Figure, [device.Name], [], $"{device.Name} cannot have the {figure} that it has.");

    private static IEnumerable<StructuralFault> VoltageSourceLoops(Netlist netlist)
    {
        var joined = new DisjointSets();
        var seen = new List<VoltageSource>();
        foreach (var source in netlist.Devices.OfType<VoltageSource>())
        {
            if (joined.Join(source.Plus, source.Minus))
            {
                seen.Add(source);
                continue;
            }

            var loop = PathBetween(seen, source.Plus, source.Minus).Append(source.Name).ToImmutableArray();
            yield return new(
                StructuralFaultKind.VoltageSourceLoop, loop, [source.Plus, source.Minus],
                $"The ideal voltage sources {string.Join(", ", loop)} form a loop.");
        }
    }

    /// <summary>The sources on the way from one node to another; they form no loop yet, so there is one way.</summary>
    private static IEnumerable<string> PathBetween(List<VoltageSource> sources, string from, string to)
    {
        var came = new Dictionary<string, VoltageSource?> { [from] = null };
        var open = new Queue<string>([from]);
        while (open.TryDequeue(out var node) && node != to)
        {
            foreach (var source in sources.Where(source => source.Plus == node || source.Minus == node))
            {
                var next = source.Plus == node ? source.Minus : source.Plus;
                if (came.TryAdd(next, source))
                    open.Enqueue(next);
            }
        }

        for (var node = to;
            came.TryGetValue(node, out var source) && source is not null;
            node = source.Plus == node ? source.Minus : source.Plus)
            yield return source.Name;
    }

    /// <summary>Parts without a path for direct current to ground: capacitors and current sources give none.</summary>
    private static IEnumerable<StructuralFault> Islands(Netlist netlist)
    {
        var joined = new DisjointSets();
        joined.Find(Netlist.Ground);
        foreach (var device in netlist.Devices.Where(device => device is not (Capacitor or CurrentSource)))
            joined.Join(device.Plus, device.Minus);

        var nodes = netlist.Devices.SelectMany(device => new[] { device.Plus, device.Minus }).Distinct();
        foreach (var island in nodes.GroupBy(joined.Find).Where(island => island.Key != joined.Find(Netlist.Ground)))
        {
            ImmutableArray<string> names = [.. island];
            ImmutableArray<string> sources =
                [.. netlist.Devices.OfType<CurrentSource>()
                    .Where(source => names.Contains(source.Plus) != names.Contains(source.Minus))
                    .Select(source => source.Name)];
            yield return sources.IsEmpty
                ? new(
                    StructuralFaultKind.Floating,
                    [],
                    names,
                    $"Nothing carries direct current between {string.Join(", ", names)} and ground.")
                : new(
                    StructuralFaultKind.CurrentSourceCutSet,
                    sources,
                    names,
                    $"Only current sources ({string.Join(", ", sources)}) join {string.Join(", ", names)} to the rest.");
        }
    }
}
