using Loadmark.Core.Rigs;
using Field = Loadmark.Files.Keys.FieldKey<Loadmark.Core.Rigs.Rig>;

namespace Loadmark.Files.Keys;

/// <summary>
/// The keys of a rig and of its feeds. With those of loads, supplies and leads they are every key of the rig file, once: the readers refuse
/// any other, and the schema is written from here.
/// </summary>
internal static class RigKeys
{
    /// <summary>The keys of a feed.</summary>
    public static KeyTable Feed { get; } = new("feed", "a feed",
        new Key("from", ValueForm.OneOrList,
            "The outlet, as supply/outlet, or a list of outlets that are joined. The supply alone will do when it has one outlet.")
        {
            IsRequired = true,
            Least = 1,
            Examples = ["brick/1"],
        },
        new Key("joined", ValueForm.Word, "How several outlets are joined. Needed with several, refused with one.")
        {
            Words = RigWords.Joined.All,
        },
        new Key("at", ValueForm.OneOrList, "The voltage the outlet is set to; with several outlets, one for all or one for each.")
        {
            Least = 1,
            Examples = ["9 V"],
        },
        new Key("lead", ValueForm.Text, "The lead, by its name under 'leads'. Default: a plain straight one."),
        new Key("to", ValueForm.OneOrList, "The load, or the loads in the order of the lead's plugs.") { IsRequired = true, Least = 1 },
        new Key("pinned", ValueForm.YesNo, "Whether a plan must leave this feed as it is. Default: no."));

    /// <summary>The keys of a rig.</summary>
    public static FieldTable<Rig> Rig { get; } = new("rig", "a rig",
        new Key("rig", ValueForm.Text, "The rig's name.") { IsRequired = true },
        new Field("mains", "Mains", ValueKinds.Mains,
            static rig => rig.Mains, static (rig, value) => rig with { Mains = (RigMains?)value },
            "The mains where it is played. Without it, mains inputs are not judged.", examples: ["230 V 50 Hz", "120 V"]),
        new Field("headroom", "Headroom to keep free", ValueKinds.Share,
            static rig => rig.Headroom, static (rig, value) => rig with { Headroom = value is decimal said ? said : null },
            "The share of each limit that is to stay free. Default: 10 %."),
        new Key("loads", ValueForm.NamedTextsOrGroups, "Everything that draws, by its tag, with its keys; a text alone is its label.")
        {
            Group = LoadKeys.Table,
            MayBeEmpty = true,
        },
        new Key("supplies", ValueForm.NamedTextsOrGroups,
            "Everything that gives, by an id without '/', with its keys; a text alone is its label.")
        {
            Group = SupplyKeys.Table,
        },
        new Key("leads", ValueForm.NamedGroups, "The leads on hand other than plain straight ones, by name.") { Group = LeadKeys.Table },
        new Key("wired", ValueForm.GroupList, "What feeds what. Leave it out to have it planned.") { Group = Feed },
        new Key("signal", ValueForm.List,
            "The order of the signal path: tags of loads, and other words, such as amp, for what is not a load."));

    /// <summary>The keys of all groups below the rig.</summary>
    public static IReadOnlyList<KeyTable> Groups { get; } =
        [LoadKeys.Table, SupplyKeys.Table, OutletKeys.Table, SupplyKeys.Bank, LeadKeys.Table, Feed];
}
