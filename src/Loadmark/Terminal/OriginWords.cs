using Loadmark.Core.Gear;

namespace Loadmark.Terminal;

/// <summary>The words for where a figure came from.</summary>
internal static class OriginWords
{
    /// <summary>The word for an origin.</summary>
    public static string Of(Origin origin) => origin switch
    {
        Origin.Stated => "stated",
        Origin.Measured => "measured",
        Origin.Derived => "derived",
        Origin.Assumed => "assumed",
        Origin.Unknown => "not known",
        _ => throw new ArgumentOutOfRangeException(nameof(origin), origin, "There is no word for it."),
    };
}
