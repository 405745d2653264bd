namespace Loadmark.Core.Checks;

/// <summary>What every rule says of itself, also one that judges more than the wiring, such as a rig's circuit.</summary>
public interface IRule
{
    /// <summary>The rule's name in findings and in the documentation, such as <c>over-voltage</c>.</summary>
    string Name { get; }

    /// <summary>How bad it is when the rule is broken.</summary>
    Severity Severity { get; }

    /// <summary>Where the rule comes from.</summary>
    string Source { get; }
}
