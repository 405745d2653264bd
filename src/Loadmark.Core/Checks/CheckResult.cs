using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>Everything the rules have to say about a rig as wired.</summary>
public sealed record CheckResult
{
    /// <summary>The rig's name.</summary>
    public required string Rig { get; init; }

    /// <summary>
    /// The severity of the worst finding; at least <see cref="Severity.Open"/> while nothing is plugged in, since then nothing has been
    /// found to be right; <see cref="Severity.Good"/> when something is and there is no finding.
    /// </summary>
    public Severity Verdict
    {
        get
        {
            var worst = Findings.Count == 0 ? Severity.Good : Findings[0].Severity;
            return NothingIsFed && worst < Severity.Open ? Severity.Open : worst;
        }
    }

    /// <summary>Whether nothing is plugged in yet: the wiring has no feed.</summary>
    public required bool NothingIsFed { get; init; }

    /// <summary>The findings, worst first; within a severity in the order of the rules, then of the file.</summary>
    public required ValueList<Finding> Findings { get; init; }

    /// <summary>What could not be told for want of data, in the order of the rules.</summary>
    public required ValueList<Untold> Untold { get; init; }

    /// <summary>All outlets of the rig in the order of the file, those that feed nothing too.</summary>
    public required ValueList<OutletLoading> Outlets { get; init; }

    /// <summary>The outlets that feed nothing and could, in the order of the file.</summary>
    public IEnumerable<OutletLoading> FreeOutlets =>
        Outlets.Items.Where(static outlet => outlet is { Loads.Count: 0, GivesNothing: false });

    /// <summary>The ids of the supplies that are to be fed by others, are not, and feed nothing; in the order of the file.</summary>
    public IEnumerable<string> IdleSupplies =>
        Outlets.Items.GroupBy(static outlet => outlet.Outlet.Supply, StringComparer.Ordinal)
            .Where(static supply => supply.All(static outlet => outlet is { Loads.Count: 0, GivesNothing: true }))
            .Select(static supply => supply.Key);

    /// <summary>Supplies and banks that print what they can give in all and feed something, in the order of the file.</summary>
    public ValueList<TotalLoading> Totals { get; init; }

    /// <summary>The share of each limit that was to stay free, 0 to below 1.</summary>
    public required decimal Headroom { get; init; }

    /// <summary>Whether <see cref="Headroom"/> is the default because the rig gives none.</summary>
    public required bool HeadroomIsDefault { get; init; }

    /// <summary>
    /// What the rules found to fit at every load that is plugged in, in words: <c>volts</c>, <c>a.c.</c>, <c>polarity</c>, <c>current</c>.
    /// What is not known, or was taken for granted, is not among it. Of worth only where no finding is worse than a note.
    /// </summary>
    public ValueList<string> Fitting { get; init; }

    /// <summary>The names of the supplies and leads that the verdict counts as there, and that are yet to be bought.</summary>
    public ValueList<string> ToBuy { get; init; }

    /// <summary>The conventions of the trade that the verdict rests on, in words: <c>centre negative</c>.</summary>
    public ValueList<string> TakenForGranted { get; init; }

    /// <summary>Whether the rig is not ready to be switched on: some finding is of harm or fails, or nothing is plugged in.</summary>
    public bool IsRefused => Verdict >= Severity.Open;

    /// <summary>The same result with what further rules have to say; of equal severity they come after what is there.</summary>
    /// <param name="findings">Their findings, in the order of those rules.</param>
    /// <param name="untold">What they could not tell.</param>
    public CheckResult With(IReadOnlyCollection<Finding> findings, IReadOnlyCollection<Untold> untold)
    {
        if (findings.Count == 0 && untold.Count == 0)
            return this;

        // The sort keeps the order of what is equal.
        ValueList<Finding> all = [.. Findings.Items.Concat(findings).OrderByDescending(static finding => finding.Severity)];
        return this with
        {
            Findings = all,
            Untold = [.. Untold.Items, .. untold],
        };
    }
}
