using System.Collections.Immutable;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>Gathers what the rules say.</summary>
public sealed class Report
{
    private readonly List<Finding> _findings = [];
    private readonly List<Untold> _untold = [];

    /// <summary>Reports that a rig breaks a rule for certain.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="subjects">Ids of what it is about, at least one; each is kept once.</param>
    /// <param name="message">What is the matter.</param>
    /// <param name="working">The arithmetic; empty where there is none.</param>
    /// <param name="remedy">What to do; empty where there is nothing.</param>
    /// <param name="arises">As <see cref="Finding.Arises"/>; none for the first subjects of one kind.</param>
    public void Add(
        IRule rule, ValueList<string> subjects, string message, string working = "", string remedy = "",
        ValueList<string> arises = default) =>
        Add(rule, rule.Severity, subjects, message, working, remedy, arises);

    /// <summary>Reports what a rule has to say that is less, or less certain, than the rule being broken.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="severity">How bad it is: <see cref="Severity.Unsure"/> where what is not known could mean harm,
    /// <see cref="Severity.Margin"/> where it could keep something from running.</param>
    /// <param name="subjects">Ids of what it is about, at least one; each is kept once.</param>
    /// <param name="message">What is the matter, or what is not known and what follows if it is otherwise.</param>
    /// <param name="working">The arithmetic; empty where there is none.</param>
    /// <param name="remedy">What to do, or what to look at and measure; empty where there is nothing.</param>
    /// <param name="arises">As <see cref="Finding.Arises"/>; none for the first subjects of one kind.</param>
    public void Add(
        IRule rule, Severity severity, ValueList<string> subjects, string message, string working = "", string remedy = "",
        ValueList<string> arises = default) =>
        _findings.Add(new Finding
        {
            Rule = rule.Id,
            Severity = severity,
            Subjects = Once(subjects),
            Arises = Once(arises),
            Message = message,
            Working = working,
            Remedy = remedy,
            Source = rule.Source,
        });

    /// <summary>Reports what a rule cannot tell, where that could mean neither harm nor failure.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="subjects">Ids of what it is about, at least one; each is kept once.</param>
    /// <param name="because">What is not known.</param>
    public void CannotTell(IRule rule, ValueList<string> subjects, string because) =>
        _untold.Add(new Untold(rule.Id, Once(subjects), because));

    /// <summary>The findings, worst first; rules come in the order of the rule book, so the order within a severity is theirs.</summary>
    public ValueList<Finding> Findings()
    {
        var sorted = ImmutableArray.CreateBuilder<Finding>(_findings.Count);
        for (var severity = Severity.Harm; severity > Severity.Good; severity--)
        {
            foreach (var finding in _findings)
            {
                if (finding.Severity == severity)
                    sorted.Add(finding);
            }
        }

        return new ValueList<Finding>(sorted.MoveToImmutable());
    }

    /// <summary>What could not be told, in the order of the rules.</summary>
    public ValueList<Untold> Untold() => [.. _untold];

    /// <summary>The same subjects, each once: a feed may name a load or an outlet twice, which is a mistake of its own.</summary>
    private static ValueList<string> Once(ValueList<string> subjects)
    {
        if (subjects.Count == 1 || (subjects.Count == 2 && subjects[0] != subjects[1]))
            return subjects;

        var seen = new HashSet<string>(subjects.Count, StringComparer.Ordinal);
        foreach (var subject in subjects)
            seen.Add(subject);
        return seen.Count == subjects.Count ? subjects : [.. seen];
    }
}
