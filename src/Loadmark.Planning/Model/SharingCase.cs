namespace Loadmark.Planning.Model;

/// <summary>The disjunctive cases of loads that share a return: how those on one lead bear one another.</summary>
internal enum SharingCase
{
    /// <summary>One load alone.</summary>
    Alone,

    /// <summary>Several on a return of their own that none of them minds.</summary>
    Quiet,

    /// <summary>Supplies that are fed by others, on a return of their own with one load at the most: nothing there meets another.</summary>
    WithInputs,

    /// <summary>Several on a return of their own, with a finding of noise.</summary>
    Noisy,

    /// <summary>Several on a return that they share with other outlets; what is heard there is counted for the return.</summary>
    OnSharedReturn,
}
