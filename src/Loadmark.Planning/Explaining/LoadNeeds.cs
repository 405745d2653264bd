using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Explaining;

/// <summary>Says what a load needs.</summary>
public static class LoadNeeds
{
    /// <summary>Voltage, kind of current, polarity, current and plug; what is not known is said to be so.</summary>
    public static string Of(Load load)
    {
        var rating = LoadRating.Of(load);
        var volts = rating.Voltage.IsKnown ? $"{rating.Voltage.Value}" : "a voltage that is not known";
        var start = rating is { Starting: { } starting, Running: { } running } && starting.Value > running.Value
            ? $", {starting.Value} while it starts"
            : "";
        var plug = rating.Plug.IsKnown ? $", plug {rating.Plug.Value}" : "";
        return $"{volts} {FormOf(rating)}, {rating.Running?.Value.ToString() ?? "a current that is not known"}{start}{plug}";
    }

    private static string FormOf(LoadRating rating)
    {
        if (rating.TakesEitherForm)
            return "a.c. or d.c.";
        if (!rating.Form.IsKnown)
            return "a.c. or d.c., not known which";
        if (rating.Form.Value == SupplyForm.Alternating)
            return "a.c.";
        return $"d.c., {(rating.Polarity.IsKnown ? PolarityText.Of(rating.Polarity.Value) : "polarity not known")}";
    }
}
