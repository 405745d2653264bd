using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;

namespace Loadmark.Files.Forms;

/// <summary>
/// What holds for the fields in which nothing is typed, by key: what the label says, what follows from it, what is assumed. A field that is
/// typed in, and one of which nothing is known, is not among them.
/// </summary>
public static class InForce
{
    /// <summary>What holds for a load.</summary>
    /// <param name="load">The load.</param>
    public static IReadOnlyDictionary<string, FieldInForce> Of(Load load)
    {
        ArgumentNullException.ThrowIfNull(load);
        var rating = LoadRating.Of(load);
        var form = rating.Form switch { { IsKnown: false } => "", { Value: SupplyForm.Alternating } => " AC", _ => " DC" };
        return Find(load, LoadKeys.Table,
        [
            (load with { Voltage = NameplateReader.Read($"{rating.Voltage.Value}{form}") }, rating.Voltage.Origin),
            (load with { Current = AsShown(rating.Rated) }, rating.Rated?.Origin ?? Origin.Unknown),
            (load with { Run = AsShown(rating.Running) }, rating.Running?.Origin ?? Origin.Unknown),
            (load with { Polarity = rating.Polarity.Value }, rating.Polarity.Origin),
            (load with { Plug = rating.Plug.Value }, rating.Plug.Origin),
            (load with { Ground = rating.Ground.Value }, rating.Ground.Origin),
            (load with { Draws = rating.DrawLaw }, Origin.Assumed),
        ]);
    }

    /// <summary>What holds for a supply, without its outlets.</summary>
    /// <param name="supply">The supply.</param>
    public static IReadOnlyDictionary<string, FieldInForce> Of(Supply supply)
    {
        ArgumentNullException.ThrowIfNull(supply);
        var rating = SupplyRating.Of(supply);
        var isolated = supply.Label?.Isolated.Value;
        return Find(supply, SupplyKeys.Table,
        [
            (supply with { Isolated = isolated ?? false }, isolated is null ? Origin.Assumed : Origin.Stated),
            (supply with { Total = rating.Total }, rating.Total is null ? Origin.Unknown : Origin.Stated),
            (supply with { Regulated = rating.Regulated }, rating.Regulated is null ? Origin.Unknown : Origin.Stated),
        ]);
    }

    /// <summary>What holds for an outlet.</summary>
    /// <param name="supply">The supply that it is of.</param>
    /// <param name="outlet">The outlet.</param>
    public static IReadOnlyDictionary<string, FieldInForce> Of(Supply supply, Outlet outlet)
    {
        ArgumentNullException.ThrowIfNull(supply);
        ArgumentNullException.ThrowIfNull(outlet);
        var rating = OutletRating.Of(supply, outlet);
        return Find(outlet, OutletKeys.Table,
        [
            (outlet with { Isolated = rating.Isolated.Value }, rating.Isolated.Origin),
            (outlet with { NoLoad = rating.NoLoad?.Value }, rating.NoLoad?.Origin ?? Origin.Unknown),
            (outlet with { Polarity = rating.Polarity.Value }, rating.Polarity.Origin),
            (outlet with { Plug = rating.Plug.Value }, rating.Plug.Origin),
        ]);
    }

    /// <summary>A current as it is shown, since a file holds no endless figure; null where it is none that a file may hold.</summary>
    private static Amps? AsShown(Figure<Amps>? amps) =>
        amps is { } known && QuantityReader.TryRead<Ampere>(FigureDisplay.Printed<Ampere>(known.Value), out var shown, out _)
            ? shown
            : null;

    /// <summary>The texts that come when a figure is put into its field, each with where the figure came from.</summary>
    private static Dictionary<string, FieldInForce> Find<T>(T thing, FieldTable<T> table, IEnumerable<(T Filled, Origin Origin)> figures)
    {
        var typed = FieldValues.Of(thing, table);
        var found = new Dictionary<string, FieldInForce>(StringComparer.Ordinal);
        foreach (var (filled, origin) in figures)
        {
            if (origin == Origin.Unknown)
                continue;
            foreach (var (key, text) in TextsOf(filled, table))
            {
                if (!typed.ContainsKey(key))
                    found[key] = new FieldInForce(text, origin);
            }
        }

        return found;
    }

    /// <summary>The texts; none where a label prints a figure that no file may hold, such as 5,000 A in all.</summary>
    private static IReadOnlyDictionary<string, string> TextsOf<T>(T filled, FieldTable<T> table)
    {
        try
        {
            return FieldValues.Of(filled, table);
        }
        catch (ArgumentException)
        {
            return new Dictionary<string, string>();
        }
    }
}
