using Loadmark.Core.Gear;

namespace Loadmark.Workshop.Sheets;

/// <summary>The signs of the kinds of current: IEC 60417-5031 for direct, 5032 for alternating current.</summary>
internal static class FormSigns
{
    /// <summary>The sign; words where the kind is not known.</summary>
    public static string Of(Figure<SupplyForm> form) => form switch
    {
        { IsKnown: false } => "(d.c. or a.c.?)",
        { Value: SupplyForm.Direct } => "⎓",
        _ => "⏦",
    };
}
