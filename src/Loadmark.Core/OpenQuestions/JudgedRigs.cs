using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.OpenQuestions;

/// <summary>
/// What the rules on nameplates say of the rigs that one search tries. Many of them are the same rig, since the usual answer to one
/// question stands while every other is tried: each is judged once.
/// </summary>
/// <param name="rig">The rig that is asked about.</param>
/// <param name="cancellation">Ends the search as a spent budget does.</param>
internal sealed class JudgedRigs(Rig rig, CancellationToken cancellation)
{
    /// <summary>
    /// How many things may be judged in one search, whatever the size of the rig: a rig of 40 loads is judged some four thousand times.
    /// </summary>
    private const long MostSteps = 500_000;

    /// <summary>How often a rig may be judged even if it is so large that the number above does not suffice.</summary>
    private const long FewestRigs = 12;

    private readonly long _size = SizeOf(rig);
    private readonly Dictionary<Rig, Dictionary<string, Finding>?> _judged = [];

    /// <summary>How many things were judged so far: the loads, outlets and feeds of each rig that was tried.</summary>
    public long Steps { get; private set; }

    /// <summary>Whether no more may be judged; it is in proportion to the rig's size, so that no rig is asked about for ever.</summary>
    public bool IsSpent => cancellation.IsCancellationRequested || Steps > Math.Max(MostSteps, FewestRigs * _size);

    /// <summary>Counts a rig that was looked at.</summary>
    public void Count() => Steps += _size;

    /// <summary>
    /// The findings worse than a note, by rule, severity and subjects; null where the answer makes no rig, such as one set to a voltage
    /// that its outlet does not give. The keys are texts and the values objects, for which code is compiled ahead: a check answers at once.
    /// </summary>
    /// <param name="answered">The rig with an answer in it.</param>
    public Dictionary<string, Finding>? Of(Rig answered)
    {
        if (_judged.TryGetValue(answered, out var findings))
            return findings;
        Count();
        return _judged[answered] = Judge(answered);
    }

    private static long SizeOf(Rig rig) =>
        1 + rig.Loads.Count + rig.Supplies.Items.Sum(static supply => (long)supply.Outlets.Count) + (rig.Wired?.Count ?? 0);

    private static Dictionary<string, Finding>? Judge(Rig answered)
    {
        try
        {
            var findings = new Dictionary<string, Finding>(StringComparer.Ordinal);
            foreach (var finding in NameplateCheck.Of(answered).Findings)
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
