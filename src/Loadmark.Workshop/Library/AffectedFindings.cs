using Loadmark.Core.Checks;

namespace Loadmark.Workshop.Library;

/// <summary>What a rig's verdict after a change rests on that was not there before.</summary>
public static class AffectedFindings
{
    /// <summary>The findings that are new, worst first.</summary>
    /// <param name="rig">The rig, with what is said of it before and after.</param>
    public static IEnumerable<Finding> New(AffectedRig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var known = (rig.Before?.Findings ?? []).Items.Select(static finding => (finding.Rule, finding.Subjects)).ToHashSet();
        return (rig.After?.Findings ?? []).Items.Where(finding => !known.Contains((finding.Rule, finding.Subjects)));
    }
}
