namespace Loadmark.Files.Keys;

/// <summary>Every key of the rig file, once: the readers refuse any other, and the schema is written from here.</summary>
internal static class RigKeys
{
    /// <summary>The key of what is printed on a thing.</summary>
    private const string Label = "label";

    public static KeyTable Load { get; } = new("load", "a load",
        new Key("from", ValueForm.Word, "Where the rest is said: 'library' takes everything else from the gear library, by the tag. What stands beside it wins; an empty value says that there is none.") { Words = [.. RigWords.GearSource.All] },
        new Key("name", ValueForm.Text, "A name for people. Without it, the tag stands alone."),
        new Key("kind", ValueForm.Text, "What sort of load it is, in your words, such as 'analog drive' or 'digital'. It decides what draw is assumed when none is known.") { Examples = [.. Core.Gear.LoadKind.Known] },
        new Key(Label, ValueForm.Text, "What is printed on it, typed as it stands.") { Examples = ["9V DC 12mA centre negative"] },
        new Key("voltage", ValueForm.Text, "The voltage, or voltages, it takes. Wins over the label.") { Examples = ["9 V", "9-18 V", "9 V AC"] },
        Figure("current", "The rated current. Wins over the label.", "300 mA"),
        FigureOrNumber("watts", "The rated power. Wins over the label.", "6 W"),
        Figure("run", "The running current, measured or published. Without it, the rated current counts.", "210 mA"),
        Figure("start", "The current while it starts, with how long that lasts. Without it, the running current counts.", "520 mA for 1.5 s"),
        Polarity("The polarity of its plug. Wins over the label; stated nowhere, centre negative is assumed of a pedal of 9 V and asked for of all else."),
        Plug("The plug it takes, outer by inner diameter in mm. Wins over the label; stated nowhere, 5.5x2.1 is assumed of a pedal of 9 V and asked for of all else."),
        Word("ground", "Which side of its supply is its ground. Wins over the label; stated nowhere, negative is assumed of a load that is centre negative and asked for of any other.", RigWords.Ground.All),
        new Key("isolate", ValueForm.YesNo, "Whether it wants a return of its own. Default: no."),
        Word("draws", "How its current follows its voltage. Default: power for a digital kind, resistance for a valve, else current.", RigWords.Draws.All),
        Figure("starts_below", "It does not start while its voltage is below this.", "7.5 V"),
        Figure("stops_below", "It stops under this voltage.", "6.5 V"),
        Figure("input_capacitance", "The capacitance across its supply input.", "100 µF"),
        new Key("priority", ValueForm.Number, "How much the show needs it: 1 most, 3 least.") { Least = 1, Most = 3 })
    {
        TextKey = Label,
    };

    public static KeyTable Outlet { get; } = new("outlet", "an outlet",
        new Key(Label, ValueForm.Text, "What is printed beside it; several settings with ';' between. Left out, the supply's label counts.") { Examples = ["9 V 500 mA; 12 V 400 mA"] },
        new Key("isolated", ValueForm.YesNo, "Whether its return is its own. Without it, the supply's word counts."),
        new Key("bank", ValueForm.Text, "The group of outlets whose return it shares."),
        Polarity("The polarity of its plug. Wins over the label; stated nowhere, centre negative is assumed of an outlet of 9 V on a supply with several, and asked for of an adaptor and of all else."),
        Plug("The plug it has, outer by inner diameter in mm. Wins over the label; stated nowhere, 5.5x2.1 is assumed of an outlet of 9 V and asked for of all else."),
        FigureOrNumber("source_ohms", "The resistance behind the outlet.", "0.05 Ω"),
        Figure("surge", "What it bears for a moment beyond its limit.", "1 A for 100 ms"),
        Figure("no_load", "The voltage with nothing connected, as measured.", "13.2 V"))
    {
        TextKey = Label,
    };

    public static KeyTable Bank { get; } = new("bank", "a bank",
        Figure("total", "What the outlets of this bank can give together.", "500 mA", "4 W") with { IsRequired = true })
    {
        TextKey = "total",
    };

    public static KeyTable Supply { get; } = new("supply", "a supply",
        new Key("from", ValueForm.Word, "Where the rest is said: 'library' takes everything else from the gear library, by the id. What stands beside it wins; an empty value says that there is none.") { Words = [.. RigWords.GearSource.All] },
        new Key("name", ValueForm.Text, "A name for people. Without it, the id stands alone."),
        new Key(Label, ValueForm.Text, "What is printed on it, typed as it stands.") { Examples = ["INPUT 100-240V~ 50/60Hz 0.6A"] },
        new Key("isolated", ValueForm.YesNo, "Whether each outlet has a return of its own. Not stated, no is assumed, the safe side."),
        Figure("total", "What it can give over all outlets, in amps, watts or both.", "18 W", "2 A", "2 A 18 W"),
        new Key("outlets", ValueForm.NamedTextsOrGroups, "Its outlets: an id, or a range of ids such as 1-4, with what is printed there. An empty text means: as the supply's label says. Left out, they are the ones that the supply's label says.") { Group = Outlet, Least = 1, MayBeEmpty = true, IsRequired = true, Instead = ["from", Label] },
        new Key("banks", ValueForm.NamedTextsOrGroups, "Groups of outlets with a limit of their own, by the name that outlets give as 'bank'.") { Group = Bank },
        Word("overload", "What its outlets do when asked for more than their limit. Default: current limit.", RigWords.Overload.All),
        new Key("regulated", ValueForm.YesNo, "Whether it holds its voltage whatever is drawn. Without it, not known."),
        new Key("mains", ValueForm.Text, "The mains it takes. Wins over the label.") { Examples = ["100-240 V 50/60 Hz"] })
    {
        TextKey = Label,
    };

    public static KeyTable Lead { get; } = new("lead", "a lead",
        Word("type", "What sort of lead it is. Default: straight.", RigWords.LeadType.All),
        Figure("length", "From end to end. Default: 0.5 m, assumed.", "0.5 m"),
        Figure("tail", "Of a chain: from the supply to the first plug.", "1.2 m"),
        Figure("pitch", "Of a chain: from one plug to the next.", "0.25 m"),
        new Key("plugs", ValueForm.Number, "How many loads it has plugs for. Default: one; of a chain, not known.") { Least = 1, Most = 1000 },
        Figure("wire", "The size of its conductors, by area or American wire gauge. Default: 0.22 mm², assumed.", "0.22 mm²", "AWG 24"),
        FigureOrNumber("ohms", "The resistance of each conductor, instead of length and wire.", "0.08 Ω"),
        FigureOrNumber("contact_ohms", "The resistance of each mated contact. Default: 0.02 Ω, assumed.", "0.02 Ω"),
        Plug("The plug at its load ends, outer by inner diameter in mm. Without it, the outlet's."),
        new Key("count", ValueForm.Number, "How many such leads there are. Default: 1; of a straight one, as many as are wanted.") { Least = 1, Most = 1000 });

    public static KeyTable Feed { get; } = new("feed", "a feed",
        new Key("from", ValueForm.OneOrList, "The outlet, as supply/outlet, or a list of outlets that are joined. The supply alone will do when it has one outlet.") { IsRequired = true, Least = 1, Examples = ["brick/1"] },
        Word("joined", "How several outlets are joined. Needed with several, refused with one.", RigWords.Joined.All),
        new Key("at", ValueForm.OneOrList, "The voltage the outlet is set to; with several outlets, one for all or one for each.") { Least = 1, Examples = ["9 V"] },
        new Key("lead", ValueForm.Text, "The lead, by its name under 'leads'. Default: a plain straight one."),
        new Key("to", ValueForm.OneOrList, "The load, or the loads in the order of the lead's plugs.") { IsRequired = true, Least = 1 },
        new Key("pinned", ValueForm.YesNo, "Whether a plan must leave this feed as it is. Default: no."));

    public static KeyTable Rig { get; } = new("rig", "a rig",
        new Key("rig", ValueForm.Text, "The rig's name.") { IsRequired = true },
        Figure("mains", "The mains where it is played. Without it, mains inputs are not judged.", "230 V 50 Hz", "120 V"),
        new Key("headroom", ValueForm.Share, "The share of each limit that is to stay free. Default: 10 %."),
        new Key("loads", ValueForm.NamedTextsOrGroups, "Everything that draws, by its tag, with its keys; a text alone is its label.") { Group = Load, MayBeEmpty = true },
        new Key("supplies", ValueForm.NamedTextsOrGroups, "Everything that gives, by an id without '/', with its keys; a text alone is its label.") { Group = Supply },
        new Key("leads", ValueForm.NamedGroups, "The leads on hand other than plain straight ones, by name.") { Group = Lead },
        new Key("wired", ValueForm.GroupList, "What feeds what. Leave it out to have it planned.") { Group = Feed },
        new Key("signal", ValueForm.List, "The order of the signal path: tags of loads, and other words, such as amp, for what is not a load."));

    private static Key Figure(string name, string description, params string[] examples) =>
        new(name, ValueForm.Figure, description) { Examples = examples };

    private static Key FigureOrNumber(string name, string description, params string[] examples) =>
        new(name, ValueForm.FigureOrNumber, description) { Examples = examples };

    private static Key Word(string name, string description, IEnumerable<string> words) =>
        new(name, ValueForm.Word, description) { Words = [.. words] };

    private static Key Polarity(string description) => Word("polarity", description, RigWords.Polarity.All);

    private static Key Plug(string description) => new("plug", ValueForm.Text, description) { Examples = ["5.5x2.1", "5.5x2.5", "3.5 mm jack"] };
}
