using Loadmark.Core.Rigs;
using Loadmark.Planning;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Texts;

/// <summary>Feeds and moves in words.</summary>
internal static class FeedWords
{
    /// <summary>Where a load is plugged in: "brick/2 at 9 V over flip".</summary>
    public static string Place(Feed feed, IStringLocalizer<PageText> T) => string.Join(' ', new string?[]
    {
        string.Join(" + ", feed.From),
        feed.Joined == Joint.None ? null : T[feed.Joined == Joint.Series ? "in series" : "in parallel"].Value,
        feed.At.Count == 0 ? null : T["at {0}", string.Join(" + ", feed.At)].Value,
        feed.Lead is { } lead ? T["over {0}", lead].Value : null,
    }.OfType<string>());

    /// <summary>A move as a sentence without its full stop.</summary>
    public static string Of(LoadMove move, IStringLocalizer<PageText> T)
    {
        var before = string.Join(", ", move.Before.Items.Select(feed => Place(feed, T)));
        return (move.After, before.Length) switch
        {
            (null, _) => T["{0}: off {1}, not fed", move.Load, before],
            ({ } after, 0) => T["{0}: not fed now, to {1}", move.Load, Place(after, T)],
            ({ } after, _) => T["{0}: from {1} to {2}", move.Load, before, Place(after, T)],
        };
    }
}
