using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Ratings;

/// <summary>
/// What the trade takes for granted where a label is silent, and where nothing may be taken for granted. All of it is common practice,
/// no source: an ordinary pedal takes 9 V d.c., centre negative, over a plug of 5.5x2.1, with its ground on the negative side. A figure
/// that a convention stands for is <see cref="Origin.Assumed"/>; where no convention may stand in, it is <see cref="Origin.Unknown"/>.
/// See docs/rules/figure-assumed.md.
/// </summary>
internal static class Conventions
{
    /// <summary>Whether a printed voltage is one that ordinary pedals are fed: 9 V is within 5 % of it, or in its range.</summary>
    public static bool IsOrdinary(QuantityRange<Volt> volts) => VoltageBand.Judge(ClassDraw.CommonVoltage, volts) == VoltageFit.Fine;

    /// <summary>Direct or alternating current, where nothing typed or printed says so clearly.</summary>
    /// <param name="isSpokenOf">Whether the label says something of it that was not understood, or says both.</param>
    /// <param name="polarity">The polarity as typed or printed; a printed polarity belongs to direct current. Null when there is
    /// none.</param>
    /// <param name="isTaken">Whether the trade takes direct current for granted here.</param>
    public static Figure<SupplyForm> Form(bool isSpokenOf, Polarity? polarity, bool isTaken)
    {
        if (isSpokenOf)
            return new Figure<SupplyForm>(SupplyForm.Direct, Origin.Unknown);
        if (polarity is not null)
            return new Figure<SupplyForm>(SupplyForm.Direct, Origin.Derived);
        return new Figure<SupplyForm>(SupplyForm.Direct, isTaken ? Origin.Assumed : Origin.Unknown);
    }

    /// <summary>A figure that nothing typed or printed says clearly: the common one.</summary>
    /// <param name="common">What is common.</param>
    /// <param name="isTaken">Whether the trade takes it for granted here; otherwise it is not known.</param>
    public static Figure<T> Common<T>(T common, bool isTaken)
        where T : struct => new(common, isTaken ? Origin.Assumed : Origin.Unknown);

    /// <summary>
    /// Whether a label speaks of something and does not say it clearly: in two ways, in a way that makes no sense, or in words not
    /// understood.
    /// </summary>
    /// <param name="label">The label; null where there is none.</param>
    /// <param name="field">The field.</param>
    /// <param name="topic">What the words would be about.</param>
    public static bool IsUnclear<T>(Nameplate? label, Func<Nameplate, Field<T>> field, LabelTopics topic)
        where T : struct =>
        label is not null && (field(label).State is FieldState.Ambiguous or FieldState.Unreadable
            || (field(label).State == FieldState.Absent && (label.NotUnderstood & topic) != LabelTopics.None));
}
