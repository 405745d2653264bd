using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>Everything the rules have to say about a rig as wired.</summary>
public sealed record CheckResult
{
    /// <summary>The rig's name.</summary>
    public required string Rig { get; init; }

    /// <summary>The severity of the worst finding; <see cref="Severity.Good"/> when there is none.</summary>
    public required Severity Verdict { get; init; }

    /// <summary>The findings, worst first; within a severity in the order of the rules, then of the file.</summary>
    public required ValueList<Finding> Findings { get; init; }

    /// <summary>What could not be told for want of data, in the order of the rules.</summary>
    public required ValueList<Untold> Untold { get; init; }

    /// <summary>All outlets of the rig in the order of the file, those that feed nothing too.</summary>
    public required ValueList<OutletLoading> Outlets { get; init; }

    /// <summary>Supplies and banks that print what they can give in all and feed something, in the order of the file.</summary>
    public ValueList<TotalLoading> Totals { get; init; }

    /// <summary>The share of each limit that was to stay free, 0 to below 1.</summary>
    public required decimal Headroom { get; init; }

    /// <summary>Whether <see cref="Headroom"/> is the default because the rig gives none.</summary>
    public required bool HeadroomIsDefault { get; init; }

    /// <summary>Whether the rig must not be switched on as it is: some finding is of harm or fails.</summary>
    public bool IsRefused => Verdict >= Severity.Fails;

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
            Verdict = all.Count == 0 ? Severity.Good : all[0].Severity,
            Findings = all,
            Untold = [.. Untold.Items, .. untold],
        };
    }
}
