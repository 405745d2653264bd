using System.Collections.Immutable;
using Loadmark.Core.Checks;
using Loadmark.Files.Library;
using Loadmark.Storage.Rigs;

namespace Loadmark.Workshop.Library;

/// <summary>A rig that has other figures than the library now has of a piece of gear.</summary>
public sealed record AffectedRig
{
    /// <summary>The rig that the change means something to.</summary>
    public required RigSummary Rig { get; init; }

    /// <summary>
    /// Whether the rig takes the piece from the library, and so has the new figures already; else they are copied into it.
    /// </summary>
    public required bool TakesFromLibrary { get; init; }

    /// <summary>
    /// Whether the rig's gear of that tag may be another piece: it has copies of figures, and neither its name nor its label is that of the
    /// library's piece, now or before its last change.
    /// </summary>
    public bool IsInDoubt { get; init; }

    /// <summary>What is said otherwise of the piece: before is what the rig has, or had, and after what the library has now.</summary>
    public required ImmutableArray<GearDifference> Differences { get; init; }

    /// <summary>
    /// What is said of the rig with the figures that it has, or had: by the rules, and by the circuit unless they have it fail already.
    /// Null when they cannot be asked.
    /// </summary>
    public CheckResult? Before { get; init; }

    /// <summary>The same with the library's figures.</summary>
    public CheckResult? After { get; init; }

    /// <summary>Why the rules cannot be asked: what keeps the rig from being read; null when nothing does.</summary>
    public string? Problem { get; init; }
}
