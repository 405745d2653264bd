using System.Collections.Immutable;
using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Files.Errors;
using Loadmark.Simulation;
using Loadmark.Simulation.Checks;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Rigs;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.Solves;

namespace Loadmark.Workshop.Sessions;

/// <summary>
/// One rig that somebody edits: as kept, as read, and what the rules say of it. Every edit goes through here: it is checked and shown at
/// once, and kept before the next one. One page has one session, and its calls come one at a time.
/// </summary>
/// <param name="store">Where rigs are kept.</param>
/// <param name="cache">The gear library; null where there is none, and then a rig that takes gear from it cannot be read.</param>
public sealed partial class RigSession(RigStore store, LibraryCache? cache = null) : IDisposable
{
    private const string Removed = "This rig was removed in another window. Export it if you want to keep it.";

    /// <summary>How long an edit waits for the circuit to be solved before it shows without.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(15);

    private readonly LatestOnly<CheckResult> _examination = new();

    /// <summary>Raised after the rig, or what is said of it, has changed.</summary>
    public event EventHandler? Changed;

    /// <summary>The rig as it is stored; null before one is opened.</summary>
    public StoredRig? Kept { get; private set; }

    /// <summary>The text of the rig's file, with edits that could not be kept yet.</summary>
    public string Text { get; private set; } = "";

    /// <summary>The rig as it reads; null when its text cannot be read.</summary>
    public Rig? Rig { get; private set; }

    /// <summary>What the rules say of the rig; null when its text cannot be read.</summary>
    public CheckResult? Check { get; private set; }

    /// <summary>
    /// Whether the circuit of the rig is still being solved. <see cref="Check"/> is then what the nameplates say, with what the circuit
    /// said before the last edit.
    /// </summary>
    public bool IsExamining { get; private set; }

    /// <summary>What keeps the text from being read.</summary>
    public ImmutableArray<FileError> Errors { get; private set; } = [];

    /// <summary>Why the last edit is not kept, and what to do; null when everything is kept.</summary>
    public string? Trouble { get; private set; }

    /// <summary>The gear library as it was when the rig was read last; null before that.</summary>
    private GearSnapshot? _library;

    /// <summary>What the edit that is not kept did.</summary>
    private string _pending = "";

    /// <summary>Opens a rig.</summary>
    /// <param name="id">Which one.</param>
    /// <returns>Whether there is such a rig.</returns>
    /// <exception cref="StorageException">The medium failed.</exception>
    public async Task<bool> OpenAsync(Guid id)
    {
        if (await store.FindAsync(id) is not { } kept)
            return false;
        await TakeAsync(kept);
        return true;
    }

    /// <summary>
    /// Takes what was kept elsewhere meanwhile: by another window, over HTTP, by the command line. Nothing is taken while an edit of this
    /// session is not kept; such an edit meets the other when it is kept.
    /// </summary>
    /// <returns>Whether there was something new, and it is shown now.</returns>
    /// <exception cref="StorageException">The medium failed.</exception>
    public async Task<bool> FollowAsync()
    {
        StoredRig? news = null;
        await _turn.WaitAsync();
        try
        {
            if (Kept is not { } kept || Trouble is not null || Conflict is not null || Text != kept.Text
                || await store.RevisionAsync(kept.Id) is not { } revision || revision == kept.Revision)
                return false;
            news = await store.FindAsync(kept.Id);

            // An edit may have come while the store was asked; it waits for its turn, and will meet what is new there.
            if (news is null || Text != kept.Text)
                return false;
        }
        finally
        {
            _turn.Release();
        }

        await TakeAsync(news);
        return true;
    }

    /// <summary>Judges a rig by every rule, as a session does.</summary>
    /// <param name="rig">The rig.</param>
    public static CheckResult Judge(Rig rig) => RigAnalysis.Of(rig, AnalysisDepth.Verdict).Check;

    /// <summary>Changes the rig.</summary>
    /// <param name="what">What the edit does, for the undo button.</param>
    /// <param name="rig">The rig after it.</param>
    /// <exception cref="InvalidOperationException">There is no readable rig in the session.</exception>
    public Task EditAsync(string what, Rig rig)
    {
        if (Rig is null)
            throw new InvalidOperationException("There is no readable rig in the session.");
        if (rig == Rig)
            return Task.CompletedTask;
        try
        {
            var update = RigFileEditor.Update(Text, rig);
            LostComments = !update.CommentsKept;
            return KeepAsync(what, update.Text, rig);
        }
        catch (ArgumentException fault)
        {
            // A name with characters that no text file holds, and the like.
            Refusal = fault.Message;
            Changed?.Invoke(this, EventArgs.Empty);
            return Task.CompletedTask;
        }
    }

    /// <summary>Changes the rig's text.</summary>
    /// <param name="what">What the edit does, for the undo button.</param>
    /// <param name="text">The text after it.</param>
    /// <returns>What keeps the text from being read; when there is anything, nothing is changed.</returns>
    public async Task<ImmutableArray<FileError>> EditTextAsync(string what, string text)
    {
        var reading = await ReadAsync(text);
        if (reading.Rig is not { } rig)
            return reading.Errors;
        LostComments = false;
        await KeepAsync(what, text, rig);
        return [];
    }

    /// <summary>Takes the last edit back.</summary>
    public Task UndoAsync() => MoveAsync(store.UndoAsync);

    /// <summary>Brings the last edit that was taken back here again.</summary>
    public Task RedoAsync() => MoveAsync(store.RedoAsync);

    private async Task MoveAsync(Func<Guid, long, CancellationToken, Task<SaveOutcome>> move)
    {
        StoredRig? now = null;
        var wasElsewhere = false;
        await _turn.WaitAsync();
        try
        {
            if (Kept is not { } kept || Trouble is not null || Theirs is not null)
                return;
            var outcome = await move(kept.Id, kept.Revision, CancellationToken.None);
            now = outcome.Rig;
            wasElsewhere = outcome.State == SaveState.Conflict;
            if (now is null)
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

        if (now is null)
            return;
        await TakeAsync(now);
        if (!wasElsewhere)
            return;
        Refusal = "This rig was changed elsewhere meanwhile. It is shown as it is kept now, and nothing was undone or redone.";
        Changed?.Invoke(this, EventArgs.Empty);
    }

    private async Task KeepAsync(string what, string text, Rig rig)
    {
        (Text, Refusal) = (text, null);
        var shown = ShowAsync(rig);
        if (Kept is not null)
            await SaveAsync(what, null);
        await shown;
    }

    /// <summary>Keeps what is in the session.</summary>
    /// <param name="what">What the edit did.</param>
    /// <param name="over">The revision that it is to follow; null for the one that the session knows.</param>
    private async Task SaveAsync(string what, long? over)
    {
        var (text, name) = (Text, Rig?.Name ?? Kept!.Name);
        await _turn.WaitAsync();
        _pending = what;
        try
        {
            var outcome = await store.SaveAsync(Kept!.Id, over ?? Kept.Revision, name, text, what);
            switch (outcome)
            {
                case { State: SaveState.Saved, Rig: { } now }:
                    (Kept, Trouble, Conflict) = (now, null, null);
                    break;
                case { State: SaveState.Conflict, Rig: { } now }:
                    Conflict = Conflict?.With(text, now) ?? new EditConflict(Kept.Text, text, now, _library);
                    break;
                default:
                    Complain(Removed);
                    return;
            }
        }
        catch (StorageException fault)
        {
            Complain(fault.Message);
            return;
        }
        finally
        {
            _turn.Release();
        }

        Changed?.Invoke(this, EventArgs.Empty);
    }

    private void Complain(string trouble)
    {
        Trouble = trouble;
        Changed?.Invoke(this, EventArgs.Empty);
    }

    private async Task TakeAsync(StoredRig kept)
    {
        (Kept, Text, Trouble, Conflict, LostComments, Refusal) = (kept, kept.Text, null, null, false, null);
        var reading = await ReadAsync(kept.Text);
        Errors = reading.Errors;
        if (reading.Rig is { } rig)
        {
            await ShowAsync(rig);
            return;
        }

        (Rig, Check) = (null, null);
        Changed?.Invoke(this, EventArgs.Empty);
    }

    private async Task<RigFileResult> ReadAsync(string text)
    {
        try
        {
            if (cache is not null)
                _library = await cache.NowAsync();
        }
        catch (StorageException)
        {
            // Saving the rig will tell; what was known of the library is used until then.
        }

        return RigFileReader.Read(text, "", _library);
    }

    /// <summary>
    /// Shows a rig. What the nameplates say is there at once; the circuit is solved aside, and where that takes longer than an edit
    /// should, what it said before stands until it is done.
    /// </summary>
    private async Task ShowAsync(Rig rig)
    {
        (Rig, Check, Errors, IsExamining) = (rig, Quick(rig), [], true);
        var examination = _examination.RunAsync(stop => RigAnalysis.Of(rig, AnalysisDepth.Verdict, stop).Check);
        if (await Task.WhenAny(examination, Task.Delay(Patience)) != examination)
            Changed?.Invoke(this, EventArgs.Empty);
        if (await examination is not { } check)
            return; // a newer edit shows itself
        (Check, IsExamining) = (check, false);
        Changed?.Invoke(this, EventArgs.Empty);
    }

    private CheckResult Quick(Rig rig)
    {
        var known = rig.Loads.Items.Select(static load => load.Id)
            .Concat(rig.Supplies.Items.SelectMany(static supply => supply.Outlets.Items.Select(outlet => $"{supply.Id}/{outlet.Id}")))
            .ToHashSet(StringComparer.Ordinal);
        var before = (Check?.Findings ?? []).Items.Where(
            finding => CircuitRules.Rules.Any(rule => rule.Id == finding.Rule) && finding.Subjects.Items.All(known.Contains)).ToList();
        return NameplateCheck.Of(rig).With(before, []);
    }

    /// <inheritdoc/>
    public void Dispose() =>
        _examination.Dispose(); // not the turn: an edit may be on its way to the disk when its page is closed
}
