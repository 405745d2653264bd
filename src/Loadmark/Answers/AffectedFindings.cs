using Loadmark.Core.Checks;
using Loadmark.Workshop.Library;

namespace Loadmark.Answers;

/// <summary>What a rig's verdict after a change rests on that was not there before.</summary>
internal static class AffectedFindings
{
    /// <summary>The findings that are new, worst first.</summary>
    public static IEnumerable<Finding> New(AffectedRig rig)
    {
        var known = (rig.Before?.Findings ?? []).Items.Select(static finding => (finding.Rule, finding.Subjects)).ToHashSet();
        return (rig.After?.Findings ?? []).Items.Where(finding => !known.Contains((finding.Rule, finding.Subjects)));
    }
}
