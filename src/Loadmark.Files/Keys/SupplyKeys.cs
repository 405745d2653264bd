using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Field = Loadmark.Files.Keys.FieldKey<Loadmark.Core.Rigs.Supply>;

namespace Loadmark.Files.Keys;

/// <summary>The keys of a supply and of its banks.</summary>
internal static class SupplyKeys
{
    /// <summary>The key of a supply's outlets.</summary>
    public const string Outlets = "outlets";

    /// <summary>The key of a supply's banks.</summary>
    public const string Banks = "banks";

    /// <summary>The keys of a bank.</summary>
    public static KeyTable Bank { get; } = new("bank", "a bank",
        new Key("total", ValueForm.Figure, "What the outlets of this bank can give together.")
        {
            Examples = ["500 mA", "4 W"],
            IsRequired = true,
        })
    {
        TextKey = "total",
    };

    /// <summary>The keys of a supply, in the order in which they are written.</summary>
    public static FieldTable<Supply> Table { get; } = new("supply", "a supply",
        new Key("from", ValueForm.Word,
            "Where the rest is said: 'library' takes everything else from the gear library, by the id. What stands beside it wins; "
            + "an empty value says that there is none.")
        {
            Words = RigWords.GearSource.All,
        },
        new Field("name", "Name", ValueKinds.Text,
            static supply => supply.Name, static (supply, value) => supply with { Name = (string?)value },
            "A name for people. Without it, the id stands alone.", columns: ["item", "description", "model"]),
        new Field("label", "Label, as printed", ValueKinds.Label,
            static supply => supply.Label, static (supply, value) => supply with { Label = (Nameplate?)value },
            "What is printed on it, typed as it stands.",
            examples: ["INPUT 100-240V~ 50/60Hz 0.6A"], columns: ["nameplate", "rating", "printed"]),
        new Field("isolated", "Outlets are isolated", ValueKinds.YesNo,
            static supply => supply.Isolated, static (supply, value) => supply with { Isolated = value is bool said ? said : null },
            "Whether each outlet has a return of its own. Not stated, no is assumed, the safe side."),
        new Field("total", "Gives in all", ValueKinds.Total,
            static supply => supply.Total, static (supply, value) => supply with { Total = (SupplyTotal?)value },
            "What it can give over all outlets, in amps, watts or both.", examples: ["18 W", "2 A", "2 A 18 W"]),
        new Key(Outlets, ValueForm.NamedTextsOrGroups,
            "Its outlets: an id, or a range of ids such as 1-4, with what is printed there. An empty text means: "
            + "as the supply's label says. Left out, they are the ones that the supply's label says.")
        {
            Group = OutletKeys.Table,
            Least = 1,
            MayBeEmpty = true,
            IsRequired = true,
            Instead = ["from", "label"],
        },
        new Key(Banks, ValueForm.NamedTextsOrGroups,
            "Groups of outlets with a limit of their own, by the name that outlets give as 'bank'.")
        {
            Group = Bank,
        },
        new Field("overload", "When overloaded", ValueKinds.Word(RigWords.Overload),
            static supply => supply.Overload, static (supply, value) => supply with { Overload = value is OverloadWay said ? said : null },
            "What its outlets do when asked for more than their limit. Default: current limit."),
        new Field("regulated", "Regulated", ValueKinds.YesNo,
            static supply => supply.Regulated, static (supply, value) => supply with { Regulated = value is bool said ? said : null },
            "Whether it holds its voltage whatever is drawn. Without it, not known."),
        new Field("mains", "Mains", ValueKinds.MainsInput,
            static supply => supply.Mains, static (supply, value) => supply with { Mains = (Nameplate?)value },
            "The mains it takes. Wins over the label.", examples: ["100-240 V 50/60 Hz"], columns: ["input"]),
        new Field("board", "Board", ValueKinds.Text,
            static supply => supply.Board, static (supply, value) => supply with { Board = (string?)value },
            "The board it belongs to. It does not feed loads of other boards, unless a plan is told that it may. "
            + "Without it, it may feed any.",
            examples: ["voice", "bass"], columns: ["group"]),
        new Field("to_buy", "Yet to be bought", ValueKinds.Flag,
            static supply => supply.ToBuy, static (supply, value) => supply with { ToBuy = value is true },
            "Whether it is yet to be bought: nobody has it. It counts as there, and is marked wherever it is shown. Default: no."))
    {
        TextKey = "label",
    };
}
