using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Bench;

/// <summary>A rig of a given size on isolated outlets, with figures enough that the rules have work to do.</summary>
internal static class SampleRig
{
    public static Rig OfLoads(int count)
    {
        var loads = new List<Load>();
        var outlets = new List<Outlet>();
        var wired = new List<Feed>();
        for (var index = 0; index < count; index++)
        {
            var digital = index % 4 == 3;
            loads.Add(new Load
            {
                Id = $"LD-{index:D3}",
                Kind = new LoadKind(digital ? "digital" : "analog drive"),
                Label = NameplateReader.Read($"9V DC {(digital ? 250 : 10 + index)}mA centre negative 5.5x2.1"),
                Start = digital ? new TimedCurrent(new Amps(0.4m), new Seconds(1)) : null,
            });
            outlets.Add(new Outlet { Id = $"{index + 1}", Label = NameplateReader.Read("9 V DC 500 mA centre negative 5.5x2.1") });
            wired.Add(new Feed { From = [new OutletRef("brick", $"{index + 1}")], To = [loads[index].Id] });
        }

        return new Rig
        {
            Name = $"{count} loads",
            Mains = new RigMains(new Volts(230), new Frequency(50)),
            Loads = [.. loads],
            Supplies =
            [
                new Supply
                {
                    Id = "brick",
                    Label = NameplateReader.Read("INPUT 100-240V~ 50/60Hz 2A"),
                    Isolated = true,
                    Total = new SupplyTotal(null, new Watts(count * 4)),
                    Outlets = [.. outlets],
                },
            ],
            Wired = new ValueList<Feed>([.. wired]),
            Signal = [.. loads.Select(load => load.Id)],
        };
    }
}
