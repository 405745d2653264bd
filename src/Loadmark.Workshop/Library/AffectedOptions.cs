namespace Loadmark.Workshop.Library;

/// <summary>How rigs that a change means something to are looked for.</summary>
public sealed record AffectedOptions
{
    /// <summary>On how many threads at once, 1 or more; null for one on each of the machine's cores.</summary>
    public int? Threads { get; init; }

    /// <summary>Is told after each rig, from several threads; null for nobody.</summary>
    public IProgress<AffectedProgress>? Progress { get; init; }
}
