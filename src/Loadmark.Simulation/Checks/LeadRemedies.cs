using Loadmark.Core.Ratings;

namespace Loadmark.Simulation.Checks;

/// <summary>What wire or what length of lead would mend a feed and pass the whole check, found by trying.</summary>
internal static class LeadRemedies
{
    /// <summary>
    /// The sizes of flexible copper conductors that leads are made of, mm²: from IEC 60228 and the small sizes below it that are sold.
    /// </summary>
    private static readonly decimal[] SquareMillimetres = [0.14m, 0.22m, 0.25m, 0.34m, 0.5m, 0.75m, 1m, 1.5m, 2.5m];

    /// <summary>The length in which leads are cut, m.</summary>
    private const decimal Cut = 0.1m;

    /// <summary>The thinnest wire of a usual size that mends it; null where none does or it is not the wire.</summary>
    public static string? Wire(FeedAlone feed, WiredRig rig, WiredFeed wired, WholeCheck whole, CancellationToken cancellation)
    {
        var wires = feed.WiresOf(wired).ToList();
        if (wires.Count == 0 || whole.IsRefusedWhateverTheLead)
            return null;
        try
        {
            foreach (var wire in wires)
                feed.Circuit.SetWire(wire, 0);
            if (!feed.AllRun(cancellation))
                return null;
            foreach (var size in SquareMillimetres)
            {
                var area = (double)size * 1e-6;
                if (area <= feed.Circuit.Leads[wires[0]].SquareMetres)
                    continue;
                foreach (var wire in wires)
                    feed.Circuit.SetWire(wire, feed.Circuit.Leads[wire].SquareMetres!.Value / area);
                if (feed.AllRun(cancellation)
                    && whole.Passes(FeedChange.WithWire(rig, wired, new SquareMetres(size * 1e-6m)), null, cancellation))
                    return $"wire of {Core.Rigs.Wire.OfArea(new SquareMetres(size * 1e-6m))} or more";
            }

            return null;
        }
        finally
        {
            feed.Circuit.Reset();
        }
    }

    /// <summary>The longest lead of the same wire that mends it, cut to 0.1 m; null where none does or it is not the length.</summary>
    public static string? Length(FeedAlone feed, WiredRig rig, WiredFeed wired, WholeCheck whole, CancellationToken cancellation)
    {
        var wires = feed.WiresOf(wired).ToList();
        if (wires.Count == 0 || whole.IsRefusedWhateverTheLead)
            return null;
        var metres = wires.Sum(wire => feed.Circuit.Leads[wire].Metres!.Value);
        var (low, high) = (0, (int)Math.Ceiling(metres / (double)Cut));
        try
        {
            // The more lead, the less voltage: halve until the last cut that still does is found.
            while (high - low > 1)
            {
                var middle = (low + high) / 2;
                foreach (var wire in wires)
                    feed.Circuit.SetWire(wire, middle * (double)Cut / metres);
                (low, high) = feed.AllRun(cancellation) ? (middle, high) : (low, middle);
            }
        }
        finally
        {
            feed.Circuit.Reset();
        }

        if (low == 0 || !whole.Passes(FeedChange.WithLength(rig, wired, low * Cut / (decimal)metres), null, cancellation))
            return null;
        return $"a lead of {new Metres(low * Cut)} or less{(wires.Count > 1 ? " from the supply to its last plug" : "")}";
    }
}
