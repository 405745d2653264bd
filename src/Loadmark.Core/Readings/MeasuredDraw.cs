using Loadmark.Core.Rigs;

namespace Loadmark.Core.Readings;

/// <summary>
/// What several readings of one draw come to, and how sure that is. Uncertainties are standard ones, as in JCGM 100:2008 (GUM).
/// </summary>
public sealed record MeasuredDraw
{
    /// <summary>The mean of the readings that count, unrounded.</summary>
    public required Amps Mean { get; init; }

    /// <summary>
    /// The mean as a rig file gets it: rounded to the second digit of its uncertainty (GUM 7.2.6), and to four digits where that is not
    /// known.
    /// </summary>
    public required Amps Figure { get; init; }

    /// <summary>The longest duration among the readings that count; null when none was timed.</summary>
    public Seconds? Duration { get; init; }

    /// <summary>How many readings there are.</summary>
    public required int Count { get; init; }

    /// <summary>Which readings are left out as outliers, by their place among those given, from 0.</summary>
    public required ValueList<int> LeftOut { get; init; }

    /// <summary>The modified z-score of each reading; empty when there are too few to judge (see <see cref="OutlierTest"/>).</summary>
    public required ValueList<double> Scores { get; init; }

    /// <summary>The smallest reading that counts.</summary>
    public required Amps Least { get; init; }

    /// <summary>The largest reading that counts.</summary>
    public required Amps Most { get; init; }

    /// <summary>The standard deviation s of a single reading, in amperes (GUM 4.2.2); null with one reading.</summary>
    public double? Deviation { get; init; }

    /// <summary>The uncertainty of the mean from the readings' own scatter, in amperes: s/√n (GUM 4.2.3); null with one reading.</summary>
    public double? FromScatter { get; init; }

    /// <summary>
    /// The uncertainty of the mean from the meter, in amperes: the half-width that its accuracy allows over √3, as each value within is as
    /// likely (GUM 4.3.7). Readings of one meter are off together, so that more of them do not make it smaller: it is the mean over
    /// the readings (GUM 5.2.2, note 1). Null when some reading's meter is not known.
    /// </summary>
    public double? FromMeter { get; init; }

    /// <summary>
    /// Both together, in amperes: √(scatter² + meter²) (GUM 5.1.2). Where one of them is not known it is the other alone, and the true
    /// one is larger. Null when neither is known.
    /// </summary>
    public double? Uncertainty => (FromScatter, FromMeter) switch
    {
        (null, null) => null,
        _ => Math.Sqrt(Math.Pow(FromScatter ?? 0, 2) + Math.Pow(FromMeter ?? 0, 2)),
    };

    /// <summary>How many readings count.</summary>
    public int Counted => Count - LeftOut.Count;
}
