using Loadmark.Core.Rigs;

namespace Loadmark.Planning;

/// <summary>A load that a plan feeds in another way than the present wiring does.</summary>
/// <param name="Load">The load's tag.</param>
/// <param name="Before">The feeds it is on now; none when it is not fed.</param>
/// <param name="After">The feed it is to be on; null when it is not fed.</param>
public sealed record LoadMove(string Load, ValueList<Feed> Before, Feed? After)
{
    /// <summary>
    /// Compares two wirings, load by load, in the order of the file, then supplies that are fed by others. What else is on a feed does not
    /// count as a move.
    /// </summary>
    /// <param name="before">The rig as it is wired.</param>
    /// <param name="after">The same rig as it is to be wired.</param>
    public static ValueList<LoadMove> Between(Rig before, Rig after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);

        var moves = new List<LoadMove>();
        foreach (var load in after.EveryLoad)
        {
            var now = (before.Wired ?? []).Items.Where(feed => feed.To.Items.Contains(load.Id)).ToList();
            var then = (after.Wired ?? []).Items.FirstOrDefault(feed => feed.To.Items.Contains(load.Id));
            if (now.Count == 0 && then is null)
                continue;
            if (now is not [var one] || then is null || !IsSame(one, then))
                moves.Add(new LoadMove(load.Id, [.. now], then));
        }

        return [.. moves];
    }

    private static bool IsSame(Feed one, Feed other) =>
        one.From == other.From && one.Joined == other.Joined && one.Lead == other.Lead && (one.At == other.At || other.At.Count == 0);
}
