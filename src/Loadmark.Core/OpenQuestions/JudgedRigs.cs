using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.OpenQuestions;

/// <summary>
/// What the rules on nameplates say of the rigs that one search tries. Many of them are the same rig, since the usual answer to one
/// question stands while every other is tried: each is judged once.
/// </summary>
internal sealed class JudgedRigs
{
    private readonly Dictionary<Rig, Dictionary<string, Finding>?> _judged = [];

    /// <summary>
    /// The findings worse than a note, by rule, severity and subjects; null where the answer makes no rig, such as one set to a voltage
    /// that its outlet does not give. The keys are texts and the values objects, for which code is compiled ahead: a check answers at once.
    /// </summary>
    /// <param name="rig">The rig with an answer in it.</param>
    public Dictionary<string, Finding>? Of(Rig rig)
    {
        if (!_judged.TryGetValue(rig, out var findings))
            _judged[rig] = findings = Judge(rig);
        return findings;
    }

    private static Dictionary<string, Finding>? Judge(Rig rig)
    {
        try
        {
            var findings = new Dictionary<string, Finding>(StringComparer.Ordinal);
            foreach (var finding in NameplateCheck.Of(rig).Findings)
            {
                if (finding.Severity > Severity.Note)
                    findings.TryAdd(
                        $"{finding.Rule.Name} {SeverityText.Sentence(finding.Severity)} {finding.Subjects.ToString()}", finding);
            }

            return findings;
        }
        catch (InvalidRigException)
        {
            return null;
        }
    }
}
