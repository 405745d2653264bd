using Loadmark.Core.Fits;

namespace Loadmark.Planning.Problem;

/// <summary>One outlet of a group, set to a voltage.</summary>
/// <param name="Group">The outlet's group.</param>
/// <param name="Setting">The voltage it is set to.</param>
internal sealed record SourcePart(OutletGroup Group, Setting Setting)
{
    /// <summary>What the part can give as one of <paramref name="times"/> side by side; null when nothing tells.</summary>
    public SourceLimit? LimitOf(decimal headroom, int times)
    {
        if (Setting.Limit is not { } limit)
            return null;
        var surge = Group.Rating.Outlet.Surge;
        return new SourceLimit(Setting.Basis, limit * times, headroom, surge?.Current.Value * times, surge?.Duration);
    }

    /// <summary>What stands at the part's plug.</summary>
    public FeedPoint Point => FeedPoint.At(Group.Rating, Setting.Standing);
}
