namespace Loadmark.Core.Checks;

/// <summary>What every rule says of itself, whatever it judges: nameplates or a rig's circuit.</summary>
public interface IRule
{
    /// <summary>The rule's id. Its page is <c>docs/rules/{Id}.md</c>.</summary>
    RuleId Id { get; }

    /// <summary>
    /// How bad it is when the rule is broken for certain; what is not certain is reported as less, see <see cref="Report"/>.
    /// </summary>
    Severity Severity { get; }

    /// <summary>Where the rule comes from.</summary>
    string Source { get; }
}
