using Loadmark.Core.Gear;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Texts;

/// <summary>Figures with where they came from, in words.</summary>
internal static class FigureWords
{
    /// <summary>The word for an origin.</summary>
    public static string Of(Origin origin, IStringLocalizer<PageText> T) => origin switch
    {
        Origin.Stated => T["stated"],
        Origin.Measured => T["measured"],
        Origin.Derived => T["derived"],
        Origin.Assumed => T["assumed"],
        _ => T["not known"],
    };

    /// <summary>
    /// "9 V" where it is stated, "9 V assumed" and the like where it is not; where nothing tells the figure only that, since the value with
    /// it merely lets a computation go on.
    /// </summary>
    /// <param name="value">The figure's value.</param>
    /// <param name="origin">Where it came from; null where there is none.</param>
    /// <param name="unknown">What to say where nothing tells it: "polarity not known".</param>
    /// <param name="T">The texts of the page.</param>
    public static string Of(string? value, Origin? origin, string unknown, IStringLocalizer<PageText> T) =>
        value is null || origin is null or Origin.Unknown ? unknown : origin == Origin.Stated ? value : $"{value} {Of(origin.Value, T)}";

    /// <summary>Figures one after the other, each with where it came from.</summary>
    public static string List(IEnumerable<ShownFigure> figures, IStringLocalizer<PageText> T) =>
        string.Join(", ", figures.Select(figure => Of(figure.What, figure.Origin, figure.Unknown ?? T["not known"], T)));

    /// <summary>A voltage with its kind of current: "9 V", "9 V a.c.".</summary>
    public static string Volts(string volts, Figure<SupplyForm> form) => form.Value == SupplyForm.Alternating ? $"{volts} a.c." : volts;
}
