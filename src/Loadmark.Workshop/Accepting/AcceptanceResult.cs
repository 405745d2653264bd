using Loadmark.Core.Acceptance;
using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.Accepting;

/// <summary>Whether a rig was built as drawn, as far as it was measured.</summary>
public sealed record AcceptanceResult
{
    /// <summary>What is to be measured.</summary>
    public required AcceptancePlan Plan { get; init; }

    /// <summary>Who measured what.</summary>
    public required BenchSession Session { get; init; }

    /// <summary>The readings in the order of measuring: open at all plugs, then loaded at all plugs, then draws.</summary>
    public required ValueList<JudgedMeasure> Measures { get; init; }

    /// <summary>Whether it was.</summary>
    public required AcceptanceVerdict Verdict { get; init; }

    /// <summary>Why the verdict is no better, the worst first; empty where the rig is accepted.</summary>
    public required ValueList<string> Because { get; init; }

    /// <summary>What is to be measured next; null where all that is needed was.</summary>
    public JudgedMeasure? Next { get; init; }

    /// <summary>
    /// The loads whose plug was found right with nothing plugged in, so that they may be plugged in.
    /// </summary>
    public required ValueList<string> MayBePluggedIn { get; init; }
}
