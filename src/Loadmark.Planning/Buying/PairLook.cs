using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Buying;

/// <summary>What outlets that may be joined put on a plug; one for all that put the same, whatever they can give.</summary>
internal sealed class PairLook
{
    private readonly OutletKind _kind;
    private readonly List<Setting> _settings;

    /// <summary>Looks at a kind of outlets.</summary>
    public PairLook(OutletKind kind) => (_kind, _settings) = (kind, SettingsOf(kind));

    /// <summary>Whether a kind of outlets looks the same.</summary>
    public bool IsThatOf(OutletKind kind) =>
        _kind.MustBeCertain == kind.MustBeCertain && _kind.Rating.Form == kind.Rating.Form && _kind.Rating.Polarity == kind.Rating.Polarity
        && _kind.Rating.Plug == kind.Rating.Plug && _settings.SequenceEqual(SettingsOf(kind));

    /// <summary>Whether a load may be fed from it side by side with its like, or in series with another, at some setting.</summary>
    /// <param name="other">The other in series; null for side by side.</param>
    /// <param name="ends">What the lead does.</param>
    /// <param name="load">The load.</param>
    public bool Suits(PairLook? other, LeadEnds ends, LoadRating load)
    {
        if (other is not null && other._kind.Rating.Polarity.Value != _kind.Rating.Polarity.Value)
            return false;
        var mustBeCertain = _kind.MustBeCertain || other?._kind.MustBeCertain is true;
        return PointsWith(other).Any(point => ends.CostOf(point, load, mustBeCertain) is not null);
    }

    private IEnumerable<FeedPoint> PointsWith(PairLook? other) => other is null
        ? _settings.Select(setting => FeedPoint.At(_kind.Rating, setting.Standing))
        : _settings.SelectMany(
            first => other._settings.Select(second => FeedPoint.At(_kind.Rating, first.Standing.InSeriesWith(second.Standing))));

    /// <summary>The settings of known voltage, without what they can give.</summary>
    private static List<Setting> SettingsOf(OutletKind kind) =>
        [.. kind.Settings.Where(static setting => setting.Volts is not null)
            .Select(static setting => setting with { Limit = null })
            .Distinct()];
}
