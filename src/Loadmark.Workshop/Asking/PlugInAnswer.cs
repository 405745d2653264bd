using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Core.Texts;
using Loadmark.Files;

namespace Loadmark.Workshop.Asking;

/// <summary>The answer to "may I plug this in?".</summary>
public sealed record PlugInAnswer
{
    /// <summary>The answer in a word.</summary>
    public required PlugInVerdict Verdict { get; init; }

    /// <summary>The answer in one sentence that a player understands.</summary>
    public required string Sentence { get; init; }

    /// <summary>Why: what decided, each a sentence; what fits where it is a yes.</summary>
    public ValueList<string> Because { get; init; }

    /// <summary>
    /// What has to hold for a yes, or has to be found out first, each as the end of a sentence that begins with "if" or "find out".
    /// </summary>
    public ValueList<string> Ifs { get; init; }

    /// <summary>
    /// What stands below the sentence: the rest of what decided a no, or all that has to hold or to be found out where the sentence does
    /// not say it; empty where the sentence says all.
    /// </summary>
    public IEnumerable<string> Details => Verdict switch
    {
        PlugInVerdict.No => Because.Items.Skip(1),
        _ when Ifs.Count > 1 || (Points.Count == 0 && Verdict == PlugInVerdict.YesIf) => Ifs.Items.Select(SentenceCase.Capital),
        _ => [],
    };

    /// <summary>The aspects, in the order in which people look at them; empty where nothing is to be plugged in yet.</summary>
    public ValueList<PlugInPoint> Points { get; init; }

    /// <summary>What stays unused of the outlets in use; null where that is not known or nothing is to be plugged in yet.</summary>
    public Amps? Left { get; init; }

    /// <summary>What else could be plugged in, each a sentence; without a supply, what to look for.</summary>
    public ValueList<string> Fits { get; init; }

    /// <summary>What is often asked next.</summary>
    public ValueList<FollowUp> Next { get; init; }

    /// <summary>The rig that was judged, wired as it was; as it can be kept.</summary>
    public required Rig Rig { get; init; }

    /// <summary>The text of a rig file that holds the same.</summary>
    public string RigText => RigFileWriter.Write(Rig);

    /// <summary>What the rules say of it.</summary>
    public required CheckResult Check { get; init; }
}
