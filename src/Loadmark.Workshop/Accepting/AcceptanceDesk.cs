using System.Collections.Immutable;
using System.Globalization;
using Loadmark.Core.Acceptance;
using Loadmark.Core.Readings;
using Loadmark.Core.Rigs;
using Loadmark.Storage.Acceptances;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Rigs;

namespace Loadmark.Workshop.Accepting;

/// <summary>
/// Where somebody measures one rig, reading by reading: each is judged and kept at once, until the record is signed. One page has one desk,
/// and its calls come one at a time.
/// </summary>
/// <param name="store">Where records are kept.</param>
/// <param name="rig">Which rig.</param>
/// <param name="clock">Tells when it was measured.</param>
public sealed class AcceptanceDesk(AcceptanceStore store, Guid rig, TimeProvider clock)
{
    private const string Elsewhere = "This record was changed in another window, and is shown as it is there. Type the last reading again.";

    /// <summary>What is to be measured; null before a rig was shown.</summary>
    public AcceptancePlan? Plan { get; private set; }

    /// <summary>What was measured, as far as it holds for the rig as it is now.</summary>
    public BenchSession Session { get; private set; } = new();

    /// <summary>What comes of it; null before a rig was shown.</summary>
    public AcceptanceResult? Result { get; private set; }

    /// <summary>The kept records, the last begun first.</summary>
    public ImmutableArray<StoredAcceptance> Records { get; private set; } = [];

    /// <summary>The record that is shown: the one that is being measured, else the last signed one; null where there is none.</summary>
    public StoredAcceptance? Shown { get; private set; }

    /// <summary>What of the shown record still holds; null where it is of the rig as it is now.</summary>
    public HeldReadings? Outdated { get; private set; }

    /// <summary>Whether readings may be typed: not into a signed record, nor into one of an earlier rig.</summary>
    public bool MayMeasure => Plan is not null && Outdated is null && Shown is null or { Signed: null };

    /// <summary>Why the last reading is not kept, and what to do; null when everything is kept.</summary>
    public string? Trouble { get; private set; }

    /// <summary>Shows the rig as it is now, with what was measured on it.</summary>
    /// <param name="now">The rig.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="Core.Ratings.InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public async Task ShowAsync(Rig now, CancellationToken cancellation = default)
    {
        Plan = await Task.Run(() => AcceptancePlan.Of(now, cancellation), cancellation);
        await LoadAsync();
    }

    /// <summary>Takes one reading, as it was typed; nothing takes an earlier one back.</summary>
    /// <param name="point">At which plug.</param>
    /// <param name="measure">What was measured.</param>
    /// <param name="typed">What the meter showed.</param>
    /// <returns>What is wrong with it, as the end of a sentence; null where nothing is.</returns>
    public async Task<string?> TakeAsync(AcceptancePoint point, BenchMeasure measure, string typed)
    {
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(typed);
        if (!MayMeasure)
            return "this record stays as it is";
        DisplayedValue<Volt> volts = default;
        DisplayedValue<Ampere> amps = default;
        var isNothing = string.IsNullOrWhiteSpace(typed);
        string? problem = null;
        if (!isNothing && (measure == BenchMeasure.Draw
            ? !DisplayedValueReader.TryRead(typed, out amps, out problem)
            : !DisplayedValueReader.TryRead(typed, out volts, out problem)))
            return problem;
        var reading = Session.Of(point.Name);
        reading = measure switch
        {
            BenchMeasure.Open => reading with { Open = isNothing ? null : volts },
            BenchMeasure.Loaded => reading with { Loaded = isNothing ? null : volts },
            _ => reading with
            {
                Draw = isNothing ? null : amps with { Value = new Amps(Math.Abs(amps.Value.Value)), IsSigned = false },
            },
        };
        var taken = Session.Taken ?? clock.GetLocalNow().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
        await KeepAsync(Session with { Taken = taken, Readings = Session.Readings.SetItem(point.Name, reading) }, signs: false);
        return null;
    }

    /// <summary>Says who measures, with what, where.</summary>
    /// <param name="told">The session with it.</param>
    public Task TellAsync(BenchSession told)
    {
        ArgumentNullException.ThrowIfNull(told);
        return MayMeasure ? KeepAsync(told with { Readings = Session.Readings }, signs: false) : Task.CompletedTask;
    }

    /// <summary>Signs the record: from now on it stays as it is.</summary>
    public Task SignAsync() => MayMeasure && Shown is not null ? KeepAsync(Session, signs: true) : Task.CompletedTask;

    /// <summary>
    /// Goes on from what still holds: in the record that is being measured, else in a new one. Of a signed record of the rig as it is now
    /// the new one has all of it.
    /// </summary>
    public async Task GoOnAsync()
    {
        if (Plan is null || Shown is null)
            return;
        var isSigned = Shown.Signed is not null;
        var from = Session with { Taken = isSigned ? null : Session.Taken };
        Outdated = null;
        if (isSigned)
            Shown = null;
        await KeepAsync(from, signs: false);
    }

    /// <summary>Begins a new record with nothing measured, by the same hand with the same meter.</summary>
    public async Task BeginAnewAsync()
    {
        if (Plan is null || Shown is { Signed: null })
            return;
        var from = Session with { Readings = ImmutableDictionary<string, BenchReading>.Empty, Taken = null, Note = null };
        (Outdated, Shown) = (null, null);
        await KeepAsync(from, signs: false);
    }

    /// <summary>Throws the record away that is being measured.</summary>
    public async Task ThrowAwayAsync()
    {
        if (Shown is not { Signed: null } shown)
            return;
        await TryAsync(async () => await store.ThrowAwayAsync(shown.Id, shown.Revision));
        await LoadAsync();
    }

    /// <summary>Keeps the session; what could not be kept is shown all the same, and told.</summary>
    private async Task KeepAsync(BenchSession session, bool signs)
    {
        Session = session;
        Result = AcceptanceJudge.Judge(Plan!, session);
        var content = AcceptanceRecord.ContentOf(Plan!, session);
        await TryAsync(async () =>
        {
            if (Shown is not { } shown)
            {
                Shown = await store.BeginAsync(rig, content);
                Records = await store.ListAsync(rig);
                Trouble = Shown is null ? "This rig was removed in another window: what is measured here is not kept." : null;
                return;
            }

            var outcome = await store.SaveAsync(shown.Id, shown.Revision, content, signs);
            if (outcome.State == SaveState.Saved)
            {
                Shown = outcome.Acceptance;
                Records = await store.ListAsync(rig);
                return;
            }

            await LoadAsync();
            Trouble = Elsewhere;
        });
    }

    private async Task TryAsync(Func<Task> work)
    {
        Trouble = null;
        try
        {
            await work();
        }
        catch (StorageException fault)
        {
            Trouble = fault.Message;
        }
    }

    private async Task LoadAsync()
    {
        if (Plan is not { } plan)
            return;
        await TryAsync(async () => Records = await store.ListAsync(rig));
        Shown = Records.FirstOrDefault(static record => record.Signed is null) ?? Records.FirstOrDefault();
        (Outdated, Session) = (null, new BenchSession());
        if (Shown is { } shown)
        {
            var record = await Task.Run(() => AcceptanceRecord.Of(shown));
            if (shown.Content.Version != plan.Version && record is { Rig: { } measured, Session: { } session })
            {
                Outdated = await Task.Run(() => HeldReadings.Of(measured, session, plan.Rig));
                Session = Outdated.Session;
            }
            else
            {
                Session = record.Session ?? Session;
                if (record.Session is null)
                {
                    // It stays as it is among the records; what is measured from now on is another one.
                    Trouble ??= "The record that was kept last cannot be read any more.";
                    Shown = null;
                }
            }
        }

        Result = AcceptanceJudge.Judge(plan, Session);
    }
}
