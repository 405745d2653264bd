using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>One thing the program has to say about a rig, with its working.</summary>
public sealed record Finding
{
    /// <summary>The rule that has this to say.</summary>
    public required RuleId Rule { get; init; }

    /// <summary>How bad the finding is.</summary>
    public required Severity Severity { get; init; }

    /// <summary>
    /// What it is about: ids of loads, outlets (<c>brick/5</c>), supplies or leads of the rig; at least one. A bank is named by its supply.
    /// </summary>
    public required ValueList<string> Subjects { get; init; }

    /// <summary>
    /// Where it arises: those of the <see cref="Subjects"/> that carry its mark in a drawing or a list, at least one. The others are
    /// touched by it.
    /// </summary>
    public ValueList<string> Arises { get => field.Count > 0 ? field : FirstOfOneKind(); init; }

    /// <summary>What is the matter, in one or two sentences for a technician.</summary>
    public required string Message { get; init; }

    /// <summary>The arithmetic, such as <c>18 V > 1.10 × 9 V = 9.9 V</c>; empty where there is none.</summary>
    public string Working { get; init; } = "";

    /// <summary>What to do about the finding; empty where there is nothing to do.</summary>
    public string Remedy { get; init; } = "";

    /// <summary>Where the rule comes from: a standard, a law of physics, or "common practice, no source".</summary>
    public required string Source { get; init; }

    /// <summary>
    /// The subjects up to the first that is of another kind than the first one: loads are named by a word, outlets by a path.
    /// </summary>
    private ValueList<string> FirstOfOneKind()
    {
        var isOutlet = IsOutlet(Subjects[0]);
        return [.. Subjects.Items.TakeWhile(subject => IsOutlet(subject) == isOutlet)];
    }

    private static bool IsOutlet(string subject) => subject.Contains('/', StringComparison.Ordinal);
}
