namespace Loadmark.Core.Nameplates.Reading;

/// <summary>Something understood on a label, before it is known what belongs with what.</summary>
internal sealed class Item
{
    public required ItemKind Kind { get; init; }

    /// <summary>Where it stands.</summary>
    public required Place Place { get; init; }

    /// <summary>Its first and the index after its last token.</summary>
    public required (int From, int To) Tokens { get; init; }

    /// <summary>The values in SI units: one, the two ends of a range, or alternatives.</summary>
    public decimal[] Values { get; init; } = [];

    /// <summary>Whether <see cref="Values"/> are the ends of a range.</summary>
    public bool IsRange { get; init; }

    /// <summary>Whether "max" or "typ" stands beside it.</summary>
    public bool IsQualified { get; init; }

    /// <summary>The other way to take a number whose comma may group thousands; null when it is clear.</summary>
    public decimal? OtherValue { get; init; }
}
