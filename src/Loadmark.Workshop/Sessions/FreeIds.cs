using System.Globalization;

namespace Loadmark.Workshop.Sessions;

/// <summary>Finds ids that nothing has yet.</summary>
public static class FreeIds
{
    /// <summary>An id like a given one: its number counted on (drive-3, drive-4), or with a number after it (brick, brick 2).</summary>
    /// <param name="id">The id.</param>
    /// <param name="taken">The ids there are.</param>
    public static string Like(string id, IEnumerable<string> taken)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(taken);
        var used = taken.ToHashSet(StringComparer.Ordinal);
        var stem = id.AsSpan().TrimEnd("0123456789");
        var digits = id.Length - stem.Length;
        var number = digits is > 0 and < 9 ? int.Parse(id.AsSpan(stem.Length), CultureInfo.InvariantCulture) : 1;
        var begin = digits is > 0 and < 9 ? stem.ToString() : id + " ";
        string next;
        do
        {
            next = begin + (++number).ToString(CultureInfo.InvariantCulture).PadLeft(digits is > 0 and < 9 ? digits : 1, '0');
        }
        while (used.Contains(next));
        return next;
    }
}
