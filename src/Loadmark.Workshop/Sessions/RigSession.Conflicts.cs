using Loadmark.Files;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Rigs;

namespace Loadmark.Workshop.Sessions;

/// <content>What is done where an edit could not be kept: the disk refused it, or another window was first.</content>
public sealed partial class RigSession
{
    /// <summary>The rig as another window has kept it meanwhile; null unless both have edited it.</summary>
    public StoredRig? Theirs => Conflict?.Theirs;

    /// <summary>What both have edited, and how it is to be resolved; null unless both have.</summary>
    public EditConflict? Conflict { get; private set; }

    /// <summary>Whether the last edit had to write the file anew, so that comments in it are gone. Undo brings them back.</summary>
    public bool LostComments { get; private set; }

    /// <summary>Why the last edit was not taken at all; null when it was.</summary>
    public string? Refusal { get; private set; }

    /// <summary>One change is kept at a time: a page may send the next edit while the last is on its way to the disk.</summary>
    private readonly SemaphoreSlim _turn = new(1);

    /// <summary>Tries again to keep what could not be kept.</summary>
    public Task RetryAsync() => Kept is null ? Task.CompletedTask : SaveAsync(_pending, null);

    /// <summary>Resolves the conflict of two windows that have edited the rig: theirs counts, and ours is one step back.</summary>
    public Task TakeTheirsAsync() =>
        Conflict is { Theirs: var theirs } ? ResolveAsync("taking the other window's edit", theirs.Name, theirs.Text) : Task.CompletedTask;

    /// <summary>Resolves the conflict of two windows that have edited the rig: ours counts, and theirs is one step back.</summary>
    public Task KeepOursAsync() => Theirs is { } theirs ? SaveAsync(_pending, theirs.Revision) : Task.CompletedTask;

    /// <summary>
    /// Resolves the conflict of two windows that have edited the rig: both count, as chosen; ours is one step back and theirs two.
    /// </summary>
    /// <returns>Why they do not fit together, and nothing is changed; null when it is done.</returns>
    public async Task<string?> MergeAsync()
    {
        if (Conflict is not { Merged: { } merged } conflict)
            return null;
        RigTextUpdate update;
        try
        {
            update = conflict.Text();
        }
        catch (ArgumentException fault)
        {
            return fault.Message;
        }

        await ResolveAsync("merging two windows' edits", merged.Rig.Name, update.Text);
        LostComments = Conflict is null && !update.CommentsKept;
        return null;
    }

    /// <summary>Keeps ours after theirs, so that it can be undone to, and then what was resolved.</summary>
    private async Task ResolveAsync(string what, string name, string text)
    {
        var conflict = Conflict!;
        StoredRig? resolved = null;
        await _turn.WaitAsync();
        try
        {
            var outcome = await store.SaveAsync(
                conflict.Theirs.Id, conflict.Theirs.Revision, Rig?.Name ?? Kept!.Name, conflict.Ours, _pending);
            if (outcome is { State: SaveState.Saved, Rig: { } ours })
            {
                Kept = ours;
                outcome = await store.SaveAsync(ours.Id, ours.Revision, name, text, what);
            }

            if (outcome is { State: SaveState.Saved })
                resolved = outcome.Rig;
            else if (outcome is { State: SaveState.Conflict, Rig: { } third })
                Conflict = conflict.With(conflict.Ours, third);
            else
                Complain(Removed);
        }
        catch (StorageException fault)
        {
            Complain(fault.Message);
        }
        finally
        {
            _turn.Release();
        }

        if (resolved is not null)
            await TakeAsync(resolved);
        else
            Changed?.Invoke(this, EventArgs.Empty);
    }
}
