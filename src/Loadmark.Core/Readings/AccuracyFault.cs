using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Readings;

/// <summary>What could not be read of a meter's accuracy.</summary>
/// <param name="Place">Where it stands in the text; all of the text where no one place is wrong.</param>
/// <param name="Problem">What is wrong with it, as the end of a sentence.</param>
public sealed record AccuracyFault(Place Place, string Problem)
{
    /// <summary>What would have been understood.</summary>
    public const string Expected =
        "a share of the reading such as 0.5 %, a share of the range such as 0.1 % of range, digits such as 2 digits, an amount such as "
        + "0.05 V, or several of these with + between";

    /// <inheritdoc/>
    public override string ToString() =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"at character {Place.Start + 1}: {Problem}; expected {Expected}");
}
