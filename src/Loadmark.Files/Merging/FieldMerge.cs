namespace Loadmark.Files.Merging;

/// <summary>Brings values together that two edits left, and keeps count of what each changed and where they meet.</summary>
/// <param name="choices">Which side counts where they meet; ours where nothing is said.</param>
internal sealed class FieldMerge(IReadOnlyDictionary<MergePlace, MergeSide> choices)
{
    public List<MergeConflict> Conflicts { get; } = [];

    public List<MergeChange> Ours { get; } = [];

    public List<MergeChange> Theirs { get; } = [];

    /// <summary>The value that holds after both edits.</summary>
    public T Pick<T>(MergePlace place, T before, T ours, T theirs)
    {
        Note(place, before, ours, theirs);
        var same = EqualityComparer<T>.Default;
        if (same.Equals(ours, before) || same.Equals(ours, theirs))
            return theirs;
        if (same.Equals(theirs, before))
            return ours;
        return Choose(place, before, ours, theirs) == MergeSide.Ours ? ours : theirs;
    }

    /// <summary>A thing that one edit may have added, changed or removed.</summary>
    /// <param name="place">Where.</param>
    /// <param name="before">It before both; null when it was not there.</param>
    /// <param name="ours">It after our edit; null when it is not there.</param>
    /// <param name="theirs">It after the other.</param>
    /// <param name="merge">Brings it together where all have it.</param>
    /// <param name="isTouched">Whether a side that has it changed something else of it, so that taking it away would lose that.</param>
    public T? PickWhole<T>(MergePlace place, T? before, T? ours, T? theirs, Func<T, T, T, T> merge, Func<MergeSide, bool>? isTouched = null)
        where T : class
    {
        if (before is not null && ours is not null && theirs is not null)
            return merge(before, ours, theirs);
        Note(place, before, ours, theirs);
        if (before is null)
            return ours is null || theirs is null || ours.Equals(theirs) ? ours ?? theirs : Chosen(place, before, ours, theirs);
        if (ours is null && theirs is null)
            return null;
        var (kept, keeper) = ours is null ? (theirs!, MergeSide.Theirs) : (ours, MergeSide.Ours);
        return kept.Equals(before) && isTouched?.Invoke(keeper) != true ? null : Chosen(place, before, ours, theirs);
    }

    /// <summary>Keeps count of what each edit changed here.</summary>
    public void Note<T>(MergePlace place, T before, T ours, T theirs)
    {
        var same = EqualityComparer<T>.Default;
        if (!same.Equals(before, ours))
            Ours.Add(new MergeChange(place, MergeText.Of(before), MergeText.Of(ours)));
        if (!same.Equals(before, theirs))
            Theirs.Add(new MergeChange(place, MergeText.Of(before), MergeText.Of(theirs)));
    }

    /// <summary>Records that the edits meet, once for each place.</summary>
    /// <returns>The side that counts.</returns>
    public MergeSide Choose(MergePlace place, object? before, object? ours, object? theirs)
    {
        if (!Conflicts.Exists(conflict => conflict.Place == place))
            Conflicts.Add(new MergeConflict(place, MergeText.Of(before), MergeText.Of(ours), MergeText.Of(theirs)));
        return choices.GetValueOrDefault(place, MergeSide.Ours);
    }

    private T? Chosen<T>(MergePlace place, T? before, T? ours, T? theirs)
        where T : class => Choose(place, before, ours, theirs) == MergeSide.Ours ? ours : theirs;
}
