using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Files.Merging;
using Loadmark.Files.Parsing;
using Loadmark.Storage.Rigs;

namespace Loadmark.Workshop.Sessions;

/// <summary>Two windows that have edited one rig, until it is decided which edit counts or how both do.</summary>
/// <param name="Before">The text that both began from.</param>
/// <param name="Ours">The text on this page.</param>
/// <param name="Theirs">The rig as the other window kept it.</param>
/// <param name="Library">The gear that they may take from the library; null where there is none.</param>
public sealed record EditConflict(string Before, string Ours, StoredRig Theirs, IGearLookup? Library = null)
{
    private readonly Dictionary<MergePlace, MergeSide> _choices = [];
    private readonly Rig? _before = RigFileReader.Read(Before, "", Library).Rig;
    private readonly Rig? _ours = RigFileReader.Read(Ours, "", Library).Rig;
    private readonly Rig? _theirs = RigFileReader.Read(Theirs.Text, "", Library).Rig;

    /// <summary>Both edits together, with what was chosen; null where one of the texts cannot be read as a rig.</summary>
    public MergeResult? Merged =>
        _before is null || _ours is null || _theirs is null ? null : RigMerge.Merge(_before, _ours, _theirs, _choices);

    /// <summary>Whether a side was chosen wherever both changed the same.</summary>
    public bool IsChosen => Merged is { } merged && merged.Conflicts.Items.All(conflict => _choices.ContainsKey(conflict.Place));

    /// <summary>What was chosen at a place; null while nothing is.</summary>
    public MergeSide? ChoiceAt(MergePlace place) => _choices.TryGetValue(place, out var side) ? side : null;

    /// <summary>Chooses a side at a place.</summary>
    public void Choose(MergePlace place, MergeSide side) => _choices[place] = side;

    /// <summary>The same choices after one of the two was edited again.</summary>
    public EditConflict With(string ours, StoredRig theirs)
    {
        var next = new EditConflict(Before, ours, theirs, Library);
        foreach (var (place, side) in _choices)
            next.Choose(place, side);
        return next;
    }

    /// <summary>The text of both edits together.</summary>
    /// <exception cref="ArgumentException">The two do not fit together: what no rig file holds, such as a setting that the other's label no
    /// longer gives.</exception>
    /// <exception cref="InvalidOperationException">One of the texts cannot be read.</exception>
    public RigTextUpdate Text() =>
        RigFileEditor.Merge(
            Before, Ours, Theirs.Text, Merged?.Rig ?? throw new InvalidOperationException("One of the texts cannot be read as a rig."));
}
