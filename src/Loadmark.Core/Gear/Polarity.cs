namespace Loadmark.Core.Gear;

/// <summary>Which contact of a coaxial d.c. connector is positive (IEC 60417-5926 shows it as a drawing).</summary>
public enum Polarity
{
    /// <summary>The centre contact is negative, the sleeve positive: what most pedals want.</summary>
    CentreNegative,

    /// <summary>The centre contact is positive, the sleeve negative.</summary>
    CentrePositive,
}
