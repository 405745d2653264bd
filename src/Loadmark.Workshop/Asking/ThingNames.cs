using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.Asking;

/// <summary>What things are called in sentences for players.</summary>
internal static class ThingNames
{
    /// <summary>What is said of a figure that the trade takes for granted.</summary>
    public const string AsUsual = "as nearly everything for 9 V pedals is";

    /// <summary>A thing: "the delay", and a tag such as drive-3 as it is.</summary>
    /// <param name="name">The id.</param>
    public static string The(string name) => name.Any(char.IsDigit) || char.IsUpper(name[0]) ? name : $"the {name}";

    /// <summary>Things: "the delay, the drive and drive-3".</summary>
    /// <param name="names">The ids.</param>
    public static string List(IEnumerable<string> names) => Core.Checks.Phrases.List([.. names.Select(The)]);

    /// <summary>An outlet: "the adaptor", "outlet 5 of the brick".</summary>
    /// <param name="outlet">The outlet.</param>
    public static string Of(OutletRating outlet) =>
        outlet.Supply.Outlets.Count == 1 ? The(outlet.Supply.Id) : $"outlet {outlet.Outlet.Id} of {The(outlet.Supply.Id)}";

    /// <summary>An outlet by its reference, see <see cref="Of(OutletRating)"/>.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="outlet">The outlet.</param>
    public static string Of(Rig rig, OutletRef outlet) => Of(OutletRating.Of(rig, outlet));
}
