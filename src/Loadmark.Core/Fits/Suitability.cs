using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Fits;

/// <summary>
/// Whether a load may be fed from what stands at a plug: the one judgement of that in the program. The rules report it, the planner
/// and the buyer ask it, and it says which of its parts decided. Sums of currents and what loads do to one another are not part of it.
/// </summary>
/// <param name="Form">Whether the kind of current suits.</param>
/// <param name="Polarity">Whether the polarity suits; yes where either takes or gives alternating current.</param>
/// <param name="NotTooHigh">Whether the voltage, with the load drawing nothing too, stays within 10 % over the highest printed.</param>
/// <param name="Level">How the voltage lies in the load's range; fine where it is not known.</param>
/// <param name="IsHigh">Whether the nominal voltage, or the one with nothing drawn where it is known, is 5 to 10 % over the highest
/// printed.</param>
/// <param name="Plug">How the plug goes into the jack, going by what is usual where a size is not known.</param>
/// <param name="PlugIsKnown">Whether both sizes are known.</param>
public readonly record struct Suitability(
    Fit Form, Fit Polarity, Fit NotTooHigh, VoltageFit Level, bool IsHigh, PlugFit Plug, bool PlugIsKnown)
{
    /// <summary>Whether anything could be harmed: no where something would be, not known where nobody can tell.</summary>
    public Fit Harmless => (Fit)Math.Max((int)Form, Math.Max((int)Polarity, (int)NotTooHigh));

    /// <summary>Whether the load would run for certain: no where the voltage is too low or the plug does not go in.</summary>
    public Fit Runs => Level == VoltageFit.TooLow || (Plug == PlugFit.None && PlugIsKnown) ? Fit.No : PlugIsKnown ? Fit.Yes : Fit.NotKnown;

    /// <summary>
    /// Whether the load may be fed from there: no where it would be harmed or would not run; not known where what is missing could mean
    /// harm. A plug whose size is not known is found out by trying and does not count.
    /// </summary>
    public Fit Answer => Harmless == Fit.No || Runs == Fit.No ? Fit.No : Harmless;

    /// <summary>
    /// Whether a load fed from there would not be at its best: doubtful in what could harm, or with less headroom in its sound.
    /// </summary>
    public bool IsDoubtful => Answer != Fit.Yes || Level == VoltageFit.Starved;

    /// <summary>
    /// How many findings of margin come of it: a loose plug or one whose size is not known, a voltage a little low or high.
    /// </summary>
    public int Margins => (Plug == PlugFit.Loose || !PlugIsKnown ? 1 : 0) + (Level == VoltageFit.Low ? 1 : 0) + (IsHigh ? 1 : 0);

    /// <summary>Judges whether a load may be fed from a point.</summary>
    /// <param name="point">What stands at the plug.</param>
    /// <param name="load">The load.</param>
    public static Suitability Of(FeedPoint point, LoadRating load)
    {
        var form = FormOf(point.Form, load);
        var polarity = form == Fit.No ? Fit.Yes : PolarityOf(point, load);
        var plug = PlugFitting.Judge(point.Plug.Value, load.Plug.Value);
        var plugIsKnown = point.Plug.IsKnown && load.Plug.IsKnown;
        if (!load.Voltage.IsKnown || point.Highest is not { } highest)
            return new Suitability(form, polarity, Fit.NotKnown, VoltageFit.Fine, false, plug, plugIsKnown);

        var level = VoltageBand.Judge(point.Volts ?? highest, load);
        var top = VoltageBand.Judge(highest, load);
        var notTooHigh = top == VoltageFit.TooHigh
            ? Fit.No
            : point.Volts is null
                || (point.MayStandAt is { } open && VoltageBand.Judge(open, load) == VoltageFit.TooHigh) ? Fit.NotKnown : Fit.Yes;
        return new Suitability(form, polarity, notTooHigh, level, top == VoltageFit.High, plug, plugIsKnown);
    }

    /// <summary>
    /// What stands against it, each as a clause for people: "it gives 18 V, the load is made for 9 V". Empty where nothing does.
    /// </summary>
    /// <param name="point">What stands at the plug.</param>
    /// <param name="load">The load.</param>
    public IEnumerable<string> Reasons(FeedPoint point, LoadRating load)
    {
        if (Form == Fit.No)
            yield return $"it gives {Word(point.Form.Value)}, {load.Id} is made for {Word(load.Form.Value)}";
        if (Form == Fit.NotKnown)
            yield return $"whether {(point.Form.IsKnown ? load.Id : "it")} is d.c. or a.c. is not known";
        if (NotTooHigh == Fit.No)
            yield return $"it gives {point.Highest}, {load.Id} is made for {load.Voltage.Value}";
        if (NotTooHigh == Fit.NotKnown)
            yield return load.Voltage.IsKnown && point.Volts is not null
                ? $"it may stand at {point.MayStandAt} with little drawn"
                : "a voltage is not known";
        if (Polarity == Fit.No)
            yield return $"it is {PolarityText.Of(point.Polarity.Value)}, {load.Id} is {PolarityText.Of(load.Polarity.Value)}";
        if (Polarity == Fit.NotKnown)
            yield return point.Polarity.IsKnown ? $"the polarity of {load.Id} is not known" : "its polarity is not known";
        if (Level is VoltageFit.TooLow or VoltageFit.Starved)
            yield return $"it gives {point.Volts ?? point.Highest}, {load.Id} is made for {load.Voltage.Value}";
        if (Plug == PlugFit.None && PlugIsKnown)
            yield return $"its plug is {point.Plug.Value}, {load.Id} takes {load.Plug.Value}";
    }

    private static Fit FormOf(Figure<SupplyForm> given, LoadRating load)
    {
        if (load.TakesEitherForm)
            return Fit.Yes;
        if (!given.IsKnown || !load.Form.IsKnown)
            return Fit.NotKnown;
        return given.Value == load.Form.Value ? Fit.Yes : Fit.No;
    }

    private static Fit PolarityOf(FeedPoint point, LoadRating load)
    {
        if (IsAlternating(point.Form) || IsAlternating(load.Form) || (load.TakesEitherForm && load.Polarity.IsAssumed))
            return Fit.Yes;
        if (!point.Polarity.IsKnown || !load.Polarity.IsKnown)
            return Fit.NotKnown;
        return point.Polarity.Value == load.Polarity.Value ? Fit.Yes : Fit.No;
    }

    private static bool IsAlternating(Figure<SupplyForm> form) => form is { IsKnown: true, Value: SupplyForm.Alternating };

    private static string Word(SupplyForm form) => form == SupplyForm.Direct ? "direct current" : "alternating current";
}
