using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>What a rule could not tell because the rig does not give it the data.</summary>
/// <param name="Rule">The rule; the default value where no rule is concerned.</param>
/// <param name="Subjects">What it could not judge.</param>
/// <param name="Because">Which figure is missing and what was done without it, as a sentence.</param>
public sealed record Untold(RuleId Rule, ValueList<string> Subjects, string Because);
