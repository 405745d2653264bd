namespace Loadmark.Core.Gear;

/// <summary>The form of the low voltage: direct or alternating current.</summary>
public enum SupplyForm
{
    /// <summary>Direct current, d.c. (IEC 60417-5031).</summary>
    Direct,

    /// <summary>Alternating current, a.c. (IEC 60417-5032).</summary>
    Alternating,
}
