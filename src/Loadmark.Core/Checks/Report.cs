using System.Collections.Immutable;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>Gathers what the rules say.</summary>
internal sealed class Report
{
    private readonly List<Finding> _findings = [];
    private readonly List<Untold> _untold = [];

    /// <summary>Reports that a rig breaks a rule.</summary>
    public void Add(Rule rule, ValueList<string> subjects, string message, string working = "", string remedy = "") =>
        _findings.Add(new Finding
        {
            Rule = rule.Name,
            Severity = rule.Severity,
            Subjects = Once(subjects),
            Message = message,
            Working = working,
            Remedy = remedy,
            Source = rule.Source,
        });

    /// <summary>Reports what a rule cannot tell.</summary>
    public void CannotTell(Rule rule, ValueList<string> subjects, string because) => _untold.Add(new Untold(rule.Name, Once(subjects), because));

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
