using System.Collections.Immutable;
using System.Globalization;
using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates;

/// <summary>Outlets that a supply's label tells apart from the others, and what each of them gives.</summary>
/// <param name="Ids">
/// Their ids as printed, with commas and hyphens between (<c>2-5</c>, <c>1,3</c>, <c>7</c>, <c>A-C</c>); null when the label gives just a
/// count.
/// </param>
/// <param name="Count">How many outlets there are, from 1 to <see cref="Most"/>.</param>
/// <param name="Modes">The settings of each of them, in the order printed.</param>
/// <param name="Place">Where on the label they stand, from the first word or figure to the last.</param>
public sealed record PrintedOutlets(string? Ids, int Count, ImmutableArray<Mode> Modes, Place Place)
{
    /// <summary>The most outlets of one label that are believed.</summary>
    public const int Most = 64;

    /// <summary>Direct or alternating, where printed for these outlets alone; absent otherwise: the label's own counts.</summary>
    public Field<SupplyForm> Form { get; init; }

    /// <summary>The polarity, where printed for these outlets alone; absent otherwise: the label's own counts.</summary>
    public Field<Polarity> Polarity { get; init; }

    /// <summary>
    /// Whether each has a return of its own, where printed for these outlets alone; absent otherwise: the label's own counts.
    /// </summary>
    public Field<bool> Isolated { get; init; }

    /// <summary>One name for each outlet: the printed ids one by one, or numbers where the label gives just a count.</summary>
    /// <param name="firstFree">The number from which outlets without printed ids are numbered.</param>
    public IEnumerable<string> Names(int firstFree)
    {
        if (Ids is null)
            return Enumerable.Range(firstFree, Count).Select(number => number.ToString(CultureInfo.InvariantCulture));
        return Ids.Split(',').SelectMany(Expand);
    }

    /// <summary>Whether both say the same, at the same place.</summary>
    public bool Equals(PrintedOutlets? other) =>
        other is not null && Ids == other.Ids && Count == other.Count && Place == other.Place
            && Modes.AsSpan().SequenceEqual(other.Modes.AsSpan())
        && Form.Equals(other.Form) && Polarity.Equals(other.Polarity) && Isolated.Equals(other.Isolated);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Ids, Count, Place, Modes.Length);

    /// <summary>The ids of one piece between commas: itself, or every number or letter of a range.</summary>
    private static IEnumerable<string> Expand(string piece)
    {
        if (piece.Split('-') is not [var first, var last])
            return [piece];
        if (first is [>= 'A' and <= 'Z' and var from] && last is [>= 'A' and <= 'Z' and var to] && from <= to)
            return Enumerable.Range(from, to - from + 1).Select(letter => ((char)letter).ToString());
        if (!int.TryParse(first, NumberStyles.None, CultureInfo.InvariantCulture, out var low)
            || !int.TryParse(last, NumberStyles.None, CultureInfo.InvariantCulture, out var high))
            return [piece];

        // 01-12 means 01, 02 … 12, as the panel has them.
        var format = first[0] == '0' && first.Length > 1 ? $"D{first.Length}" : "D";
        return Enumerable.Range(low, Math.Clamp(high - low + 1, 0, Most))
            .Select(number => number.ToString(format, CultureInfo.InvariantCulture));
    }
}
