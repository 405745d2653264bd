using Loadmark.Circuits.Devices;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Simulation.Wiring;

/// <summary>
/// Lays the lead of one feed. In each conductor a contact lies at the supply end and one at each plug; the plug's contact lies
/// in the branch to that plug, the other one in the tail. Where outlets are joined, each has a lead of its own to the plug
/// (parallel), or one conductor leads from the first, one from the last, and contacts alone lie between them (series).
/// </summary>
internal sealed class LeadBuilder(WiredFeed feed, LeadModel figures, Func<WiredOutlet, Terminals> terminals, List<Device> devices)
{
    private readonly List<LaidPart> _parts = [];

    /// <summary>What was laid.</summary>
    public IReadOnlyList<LaidPart> Parts => _parts;

    /// <summary>Lays it and returns the contacts at each load, in the order of the feed.</summary>
    public Contacts[] Lay()
    {
        var plugs = feed.Loads.Length;
        var jacks = new Contacts[plugs];
        if (feed.Joined == Joint.None && plugs == 1)
        {
            var only = Jack(0);
            Part("", ContactsOf(feed.Outlets[0]), only, figures.IsChain ? figures.Tail : figures.Metres, 2, 0, 1);
            jacks[0] = only;
        }
        else
        {
            var at = Trunk();
            for (var plug = 0; plug < plugs; plug++)
            {
                if (figures.IsChain && plug > 0)
                {
                    var next = Node($"plug {plug + 1}");
                    Part($"plug {plug} to {plug + 1}", at, next, figures.Pitch, 0, plug, plugs);
                    at = next;
                }

                jacks[plug] = Jack(plug);
                Part($"plug {plug + 1}", at, jacks[plug], 0, 1, plug, plug + 1);
            }
        }

        return feed.Reverses ? Array.ConvertAll(jacks, static jack => jack.Reversed) : jacks;
    }

    /// <summary>From the outlets to the first plug, without its contact.</summary>
    private Contacts Trunk()
    {
        var end = Node("plug 1");
        var metres = figures.IsChain ? figures.Tail : figures.Metres;
        var what = figures.IsChain ? "tail" : "wire";
        switch (feed.Joined)
        {
            case Joint.Parallel:
                for (var place = 0; place < feed.Outlets.Length; place++)
                    Part($"{what} {place + 1}", ContactsOf(feed.Outlets[place]), end, metres, 1, 0, feed.Loads.Length);
                return end;
            case Joint.Series:
                Part(what, InSeries(), end, metres, 1, 0, feed.Loads.Length);
                return end;
            default:
                Part(what, ContactsOf(feed.Outlets[0]), end, metres, 1, 0, feed.Loads.Length);
                return end;
        }
    }

    /// <summary>The ends of outlets in series. The 0 V of the load comes from the first.</summary>
    private Contacts InSeries()
    {
        var isCentreLow = feed.Outlets[0].Rating.Polarity.Value == Polarity.CentreNegative;
        for (var place = 1; place < feed.Outlets.Length; place++)
        {
            var (lower, upper) = (ContactsOf(feed.Outlets[place - 1]), ContactsOf(feed.Outlets[place]));
            var (from, to) = isCentreLow ? (lower.Sleeve, upper.Centre) : (lower.Centre, upper.Sleeve);
            var name = $"joint {place}";
            devices.Add(new Resistor($"feed {feed.Index + 1} {name}", from, to, figures.AtLeast(2 * figures.ContactOhms)));
            _parts.Add(new LaidPart(name, devices.Count - 1, 1, 2 * figures.ContactOhms, 0, 0, 0, feed.Loads.Length));
        }

        var (first, last) = (ContactsOf(feed.Outlets[0]), ContactsOf(feed.Outlets[^1]));
        return isCentreLow ? new Contacts(first.Centre, last.Sleeve) : new Contacts(last.Centre, first.Sleeve);
    }

    private void Part(string name, Contacts from, Contacts to, double metres, int contacts, int first, int end)
    {
        var contact = contacts * figures.ContactOhms;
        var wire = metres > 0 || contacts != 1 ? figures.WireOhms(metres) : 0;
        var ohms = figures.AtLeast(contact + wire);
        var prefix = name.Length == 0 ? $"feed {feed.Index + 1}" : $"feed {feed.Index + 1} {name}";
        devices.Add(new Resistor($"{prefix}, centre", from.Centre, to.Centre, ohms));
        devices.Add(new Resistor($"{prefix}, sleeve", from.Sleeve, to.Sleeve, ohms));
        _parts.Add(new LaidPart(name, devices.Count - 2, 2, contact, wire, metres, first, end));
    }

    private Contacts ContactsOf(WiredOutlet outlet) => Contacts.Of(terminals(outlet), outlet.Rating.Polarity.Value);

    private Contacts Jack(int plug) => Node($"load {plug + 1} {feed.Loads[plug].Id}");

    private Contacts Node(string name) => new($"feed {feed.Index + 1} {name} centre", $"feed {feed.Index + 1} {name} sleeve");

    /// <summary>A stretch that was laid.</summary>
    /// <param name="Name">What it is.</param>
    /// <param name="Device">Its first conductor among the devices.</param>
    /// <param name="Conductors">How many there are.</param>
    /// <param name="ContactOhms">Contacts in each, Ω.</param>
    /// <param name="WireOhms">Wire in each, Ω.</param>
    /// <param name="Metres">Length, m.</param>
    /// <param name="First">Its current goes to the loads from this position on.</param>
    /// <param name="End">Up to and without this one.</param>
    internal sealed record LaidPart(
        string Name, int Device, int Conductors, double ContactOhms, double WireOhms, double Metres, int First, int End);
}
