using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Explaining;

/// <summary>Describes the outlet that a load is lacking.</summary>
public static class MissingOutlet
{
    /// <summary>An outlet that would feed the load with the rig's headroom, its current rounded up to what is sold: 50 mA steps.</summary>
    /// <param name="load">The load.</param>
    /// <param name="headroom">The share of the limit that is to stay free, 0 to below 1.</param>
    /// <returns>It, and the words for it, which say all that one would not take for granted.</returns>
    public static (string Text, Outlet Outlet) For(Load load, decimal headroom)
    {
        var rating = LoadRating.Of(load);
        var need = Math.Max(rating.Starting?.Value.Value ?? 0, (rating.Running?.Value.Value ?? 0) / (1 - headroom));
        var amps = new Amps(Math.Max(0.05m, Math.Ceiling(need / 0.05m) * 0.05m));
        var volts = rating.Voltage.Value.Low;
        var (form, kind) = rating.TakesEitherForm || !rating.Form.IsKnown ? ("", "")
            : rating.Form.Value == SupplyForm.Alternating ? (" a.c.", " AC") : (" d.c.", " DC");
        var bare = new Outlet { Id = "1", Label = NameplateReader.Read($"{volts} {amps}") };
        var taken = OutletRating.Of(new Supply { Id = "more", Outlets = [bare, bare with { Id = "2" }] }, bare);
        if (taken.Form.IsKnown && taken.Form.Value == rating.Form.Value)
            form = "";
        return ($"{volts}{form} {amps}{Unusual(rating, taken)}", bare with
        {
            Label = NameplateReader.Read($"{volts}{kind} {amps}"),
            Polarity = rating.Polarity.IsKnown ? rating.Polarity.Value : null,
            Plug = rating.Plug.IsKnown ? rating.Plug.Value : null,
        });
    }

    /// <summary>What must be said of an outlet because it is not what one takes for granted of an outlet of its voltage.</summary>
    private static string Unusual(LoadRating rating, OutletRating taken)
    {
        var isDirect = rating.Form.Value == SupplyForm.Direct && rating.Polarity.IsKnown
            && !(rating.TakesEitherForm && rating.Polarity.IsAssumed);
        var polarity = isDirect && !(taken.Polarity.IsKnown && taken.Polarity.Value == rating.Polarity.Value)
            ? $" {PolarityText.Of(rating.Polarity.Value)}"
            : "";
        var plug = rating.Plug.IsKnown && rating.Plug.Value != Plug.Common ? $" plug {rating.Plug.Value}" : "";
        return polarity + plug;
    }
}
