using Loadmark.Files.Forms;
using Loadmark.Files.Merging;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Texts;

/// <summary>What two windows changed, in plain words.</summary>
internal static class MergeWords
{
    /// <summary>Where: "delay-2, Label, as printed".</summary>
    public static string Of(MergePlace place, IStringLocalizer<PageText> T)
    {
        var thing = ThingOf(place, T);
        if (place.Field.Length == 0)
            return thing;
        var field = FieldOf(place, T);
        return thing.Length == 0 ? field : T["{0}, {1}", thing, field];
    }

    /// <summary>A change: "delay-2, Rated current: 300 mA became 250 mA".</summary>
    public static string Of(MergeChange change, IStringLocalizer<PageText> T)
    {
        var place = Of(change.Place, T);
        return (change.Before, change.After, change.Place.Field.Length) switch
        {
            (null, { } after, 0) => T["{0}: added ({1})", place, after],
            ({ } before, null, 0) => T["{0}: removed ({1})", place, before],
            (null, { } after, _) => T["{0}: now {1}", place, after],
            ({ } before, null, _) => T["{0}: {1} taken out", place, before],
            ({ } before, { } after, _) => T["{0}: {1} became {2}", place, before, after],
            _ => place,
        };
    }

    /// <summary>One side of a conflict.</summary>
    public static string Side(string? value, IStringLocalizer<PageText> T) => value ?? T["nothing there"];

    private static string ThingOf(MergePlace place, IStringLocalizer<PageText> T) => place switch
    {
        { Part: MergePart.Feed, Subject.Length: > 0 } => T["feed from {0}", place.Subject],
        { Part: MergePart.Lead, Subject.Length: > 0 } => T["lead {0}", place.Subject],
        { Part: MergePart.Outlet } => T["outlet {0}", place.Subject],
        { Part: MergePart.Bank } => T["outlets of {0} together", place.Subject],
        _ => place.Subject,
    };

    private static string FieldOf(MergePlace place, IStringLocalizer<PageText> T)
    {
        var key = place.Field;
        return (place.Part, key) switch
        {
            (MergePart.Load or MergePart.Supply, "from") => T["taken from the library"],
            (MergePart.Load, "wired") => T["fed from"],
            (MergePart.Load, "order") => T["order of the loads"],
            (MergePart.Supply, "order") when place.Subject.Length > 0 => T["order of its outlets"],
            (MergePart.Supply, "order") => T["order of the supplies"],
            (MergePart.Lead, "order") => T["order of the leads"],
            (MergePart.Feed, "order") => T["order of the feeds"],
            (MergePart.Bank, "order") => T["their order"],
            (MergePart.Feed, "at") => T["setting"],
            (MergePart.Feed, "lead") => T["over lead"],
            (MergePart.Feed, "joined") => T["outlets joined in"],
            (MergePart.Feed, "pinned") => T["left alone by plans"],
            (MergePart.Feed, "to") => T["order of its loads"],
            (MergePart.Signal, _) => T["Order of the signal path"],
            (MergePart.Rig, "rig") => T["Name of the rig"],
            (MergePart.Rig, "planned") => T["wiring left to be planned"],
            _ => T[GearForm.TitleOf(key)],
        };
    }
}
