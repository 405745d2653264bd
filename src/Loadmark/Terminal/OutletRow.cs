using System.Globalization;
using Loadmark.Core.Checks;

namespace Loadmark.Terminal;

/// <summary>One line of the table of outlets: an outlet in use, or free outlets of one supply that are alike.</summary>
/// <param name="Name">The outlet, or the first and last of several: <c>brick/6-8</c>.</param>
/// <param name="Outlet">The outlet, or the first of several.</param>
internal sealed record OutletRow(string Name, OutletLoading Outlet)
{
    /// <summary>Whether nothing is fed from here.</summary>
    public bool IsFree => Outlet.Loads.Count == 0;

    /// <summary>The lines for a rig's outlets, in their order, with runs of like free outlets folded into one.</summary>
    public static IReadOnlyList<OutletRow> Fold(IReadOnlyList<OutletLoading> outlets)
    {
        var rows = new List<OutletRow>(outlets.Count);
        for (var index = 0; index < outlets.Count;)
        {
            var first = outlets[index];
            var last = first;
            index++;
            while (index < outlets.Count && Continues(first, last, outlets[index]))
                last = outlets[index++];

            rows.Add(
                new OutletRow(
                    ReferenceEquals(last, first) ? first.Outlet.ToString() : $"{first.Outlet.ToString()}-{last.Outlet.Outlet}", first));
        }

        return rows;
    }

    private static bool Continues(OutletLoading first, OutletLoading last, OutletLoading next) =>
        first.Loads.Count == 0 && next.Loads.Count == 0
        && first.Outlet.Supply == next.Outlet.Supply && first.Volts == next.Volts && first.Limit == next.Limit
        && int.TryParse(last.Outlet.Outlet, NumberStyles.None, CultureInfo.InvariantCulture, out var before)
        && int.TryParse(next.Outlet.Outlet, NumberStyles.None, CultureInfo.InvariantCulture, out var after)
        && after - 1 == before;
}
