using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks;

/// <summary>Gathers the conventions of the trade that a rig's verdict rests on, for one finding that tells them all.</summary>
internal sealed class TakenForGranted
{
    private readonly List<string> _subjects = [];

    /// <summary>Looks through a rig.</summary>
    /// <param name="rig">The rig; only what is plugged in counts.</param>
    public TakenForGranted(WiredRig rig)
    {
        List<WiredLoad> loads = [.. rig.Loads.Items.Where(static load => load.Feeds.Count > 0)];
        List<WiredOutlet> outlets = [.. rig.Outlets.Items.Where(static outlet => outlet.Feeds.Count > 0)];
        Add(
            "direct current",
            "d.c.",
            loads.Where(static load => load.Rating.Form.Origin == Origin.Assumed && !load.Rating.TakesEitherForm)
                .Select(static load => load.Id)
                .Concat(outlets.Where(static outlet => outlet.Rating.Form.Origin == Origin.Assumed).Select(static outlet => outlet.Name)));
        Add(
            "centre negative",
            "centre negative",
            loads.Where(
                static load =>
                    load.Rating.Polarity.Origin == Origin.Assumed && IsDirect(load.Rating.Form)
                        && !load.Rating.TakesEitherForm).Select(static load => load.Id)
                .Concat(
                    outlets.Where(static outlet => outlet.Rating.Polarity.Origin == Origin.Assumed && IsDirect(outlet.Rating.Form))
                        .Select(static outlet => outlet.Name)));
        Add(
            $"a plug of {Plug.Common}",
            Plug.Common.Name,
            loads.Where(static load => load.Rating.Plug.Origin == Origin.Assumed).Select(static load => load.Id)
                .Concat(outlets.Where(static outlet => outlet.Rating.Plug.Origin == Origin.Assumed).Select(static outlet => outlet.Name)));

        // A ground only matters where loads share a return.
        Add(
            "the ground on the negative side",
            "negative ground",
            rig.Returns.Items.Where(static group => group.Loads.Count > 1).SelectMany(static group => group.Loads)
                .Where(static load => load.Rating.Ground.Origin == Origin.Assumed && IsDirect(load.Rating.Form))
                .Select(static load => load.Id));

        // A supply with one outlet shares its return with no other, so whether it is isolated changes nothing.
        Add(
            "no isolation between the outlets, the safe side,",
            "not isolated",
            outlets.Where(static outlet => outlet.Rating.Isolated.IsAssumed && outlet.Rating.Supply.Outlets.Count > 1)
                .Select(static outlet => outlet.Rating.Supply.Id));
    }

    /// <summary>One clause for each convention: "centre negative for drive-3 and brick/1".</summary>
    public List<string> Clauses { get; } = [];

    /// <summary>The conventions in short, each once: "centre negative".</summary>
    public List<string> Conventions { get; } = [];

    /// <summary>All that something was taken for granted of, each once.</summary>
    public IEnumerable<string> Subjects => _subjects.Distinct(StringComparer.Ordinal);

    private static bool IsDirect(Figure<SupplyForm> form) => form.Value == SupplyForm.Direct;

    private void Add(string what, string convention, IEnumerable<string> names)
    {
        List<string> each = [.. names.Distinct(StringComparer.Ordinal)];
        if (each.Count == 0)
            return;
        _subjects.AddRange(each);
        Clauses.Add($"{what} for {Phrases.List(each)}");
        Conventions.Add(convention);
    }
}
