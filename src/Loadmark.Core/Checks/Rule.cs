using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks;

/// <summary>One thing that can be wrong with a rig, and how to tell. Its page is <c>docs/rules/{Name}.md</c>.</summary>
public abstract class Rule : IRule
{
    /// <summary>The source of rules that rest on what technicians do rather than on a published text.</summary>
    protected const string CommonPractice = "common practice, no source";

    /// <summary>The rule's name in findings and in the documentation, such as <c>over-voltage</c>.</summary>
    public abstract string Name { get; }

    /// <summary>How bad it is when the rule is broken.</summary>
    public abstract Severity Severity { get; }

    /// <summary>Where the rule comes from.</summary>
    public abstract string Source { get; }

    /// <summary>Judges a rig and reports every place where it breaks the rule, or where that cannot be told.</summary>
    internal abstract void Judge(WiredRig rig, Budgets budgets, Report report);
}
