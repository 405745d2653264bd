namespace Loadmark.Core.Checks;

/// <summary>One thing that can be wrong with a rig, and how to tell. The one protocol of all rules.</summary>
/// <typeparam name="TCase">What the rule judges: the nameplates of a wired rig, or its circuit with what became of it.</typeparam>
public abstract class Rule<TCase> : IRule
{
    /// <summary>The source of rules that rest on what technicians do rather than on a published text.</summary>
    protected const string CommonPractice = "common practice, no source";

    /// <inheritdoc/>
    public abstract RuleId Id { get; }

    /// <inheritdoc/>
    public abstract Severity Severity { get; }

    /// <inheritdoc/>
    public abstract string Source { get; }

    /// <summary>Judges a rig and reports every place where it breaks the rule, or where that cannot be told.</summary>
    /// <param name="subject">What is judged.</param>
    /// <param name="report">Where the findings go.</param>
    /// <param name="cancellation">Stops a rule that computes.</param>
    public abstract void Judge(TCase subject, Report report, CancellationToken cancellation);
}
