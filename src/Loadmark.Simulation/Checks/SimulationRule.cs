using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;

namespace Loadmark.Simulation.Checks;

/// <summary>A rule that judges a rig by its circuit. Its page is <c>docs/rules/{Name}.md</c>.</summary>
public abstract class SimulationRule : IRule
{
    /// <inheritdoc/>
    public abstract string Name { get; }

    /// <inheritdoc/>
    public Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public abstract string Source { get; }

    /// <summary>What the rule has to say about a rig.</summary>
    internal abstract IEnumerable<Finding> Judge(Evidence evidence, CancellationToken cancellation);

    /// <summary>A finding of this rule.</summary>
    protected Finding Make(ValueList<string> subjects, string message, string working, string remedy) => new()
    {
        Rule = Name,
        Severity = Severity,
        Subjects = [.. subjects.Items.Distinct(StringComparer.Ordinal)],
        Message = message,
        Working = working,
        Remedy = remedy,
        Source = Source,
    };
}
