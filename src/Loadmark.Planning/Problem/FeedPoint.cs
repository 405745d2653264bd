using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Problem;

/// <summary>What stands at the plug of a feed.</summary>
/// <param name="Volts">The nominal voltage.</param>
/// <param name="Highest">The nominal voltage, or that with nothing drawn where it is known and higher.</param>
/// <param name="Form">Direct or alternating.</param>
/// <param name="Polarity">The outlet's polarity.</param>
/// <param name="Plug">The outlet's plug.</param>
internal sealed record FeedPoint(Volts Volts, Volts Highest, SupplyForm Form, Polarity Polarity, Plug Plug)
{
    /// <summary>How many findings of margin a load gives here for voltage and plug; null when it must not be fed from here.</summary>
    /// <param name="load">The load.</param>
    /// <param name="lead">What the lead makes of it.</param>
    public int? MarginsOf(LoadGroup load, LeadEnds lead)
    {
        var rating = load.Rating;
        if (Form != rating.Form.Value)
            return null;
        if (Form == SupplyForm.Direct && Polarity == rating.Polarity.Value == lead.Reverses)
            return null;

        var fit = PlugFitting.Judge(lead.Plug ?? Plug, rating.Plug.Value);
        if (fit == PlugFit.None)
            return null;

        var low = VoltageBand.Judge(Volts, rating.Voltage.Value);
        var high = VoltageBand.Judge(Highest, rating.Voltage.Value);
        if (low is VoltageFit.TooLow or VoltageFit.TooHigh || high == VoltageFit.TooHigh)
            return null;
        return (fit == PlugFit.Loose ? 1 : 0) + (low == VoltageFit.Low ? 1 : 0) + (high == VoltageFit.High ? 1 : 0);
    }
}
