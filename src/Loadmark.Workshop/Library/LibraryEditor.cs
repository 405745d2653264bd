using Loadmark.Core.Gear;
using Loadmark.Core.Readings;
using Loadmark.Core.Rigs;
using Loadmark.Files.Library;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;

namespace Loadmark.Workshop.Library;

/// <summary>Changes the library, for the page and the commands alike.</summary>
/// <param name="store">What is kept, opened.</param>
public sealed class LibraryEditor(Store store)
{
    /// <summary>How many pieces are taken in one go, so that nobody waits long for their turn to save.</summary>
    private const int AtATime = 1000;

    /// <summary>
    /// How often a change that comes out of readings alone is made again when somebody else has changed the piece in between.
    /// </summary>
    private const int Attempts = 5;

    /// <summary>Takes gear into the library: what is new, and of what differs only what somebody said.</summary>
    /// <param name="preview">What was compared.</param>
    /// <param name="takes">Whether a row that differs is to be taken.</param>
    /// <param name="what">Where the gear comes from, for the list of changes: "imported from pedals.csv".</param>
    /// <param name="cancellationToken">Gives up. What was taken by then stays taken, and is the same already the next time.</param>
    /// <exception cref="StorageException">The medium failed. What was taken by then stays taken.</exception>
    public async Task<ImportResult> TakeAsync(
        ImportPreview preview, Func<ImportRow, bool> takes, string what, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(preview);
        ArgumentNullException.ThrowIfNull(takes);
        List<ImportRow> rows =
            [.. preview.Rows.Where(row => row.State == ImportState.New || (row.State == ImportState.Differs && takes(row)))];
        var outcomes = new List<GearOutcome>(rows.Count);
        foreach (var some in rows.Chunk(AtATime))
            outcomes.AddRange(
                await store.Gear.ApplyAsync(
                    [.. some.Select(row => new GearStep(
                        row.Present?.Id, row.Present?.Stored.Revision ?? 0, GearContents.Of(row.Piece!, row.Words), what))],
                    cancellationToken));
        var saved = rows.Zip(outcomes).ToLookup(static pair => pair.Second.State == GearState.Saved, static pair => pair.First);
        return new ImportResult(
            [.. saved[true].Where(static row => row.State == ImportState.New)],
            [.. saved[true].Where(static row => row.State == ImportState.Differs)],
            [.. preview.Rows.Where(row => row.State == ImportState.Differs && !rows.Contains(row))],
            [.. saved[false]]);
    }

    /// <summary>Adds one piece to the library.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="words">The words that it is filed under.</param>
    /// <param name="what">Where it comes from, for the list of changes.</param>
    /// <param name="cancellationToken">Gives up, with nothing added.</param>
    /// <exception cref="ArgumentException">The piece has a figure or a text that no file holds.</exception>
    /// <exception cref="StorageException">The medium failed; nothing is added.</exception>
    public Task<GearOutcome> AddAsync(
        GearPiece piece, ValueList<string> words, string what, CancellationToken cancellationToken = default) =>
        store.Gear.AddAsync(GearContents.Of(piece, words), what, cancellationToken);

    /// <summary>Says something else of a piece.</summary>
    /// <param name="gear">The piece as the user saw it.</param>
    /// <param name="piece">What is to be said of it.</param>
    /// <param name="words">The words that it is to be filed under.</param>
    /// <param name="what">What the change does, for the list of changes.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <exception cref="ArgumentException">The piece has a figure or a text that no file holds, or is of another kind.</exception>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public Task<GearOutcome> ChangeAsync(
        StoredGear gear, GearPiece piece, ValueList<string> words, string what, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(gear);
        return store.Gear.SaveAsync(gear.Id, gear.Revision, GearContents.Of(piece, words), what, cancellationToken);
    }

    /// <summary>What the readings of a load come to.</summary>
    /// <param name="gear">Which piece.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public async Task<LoadMeasurements> MeasuredAsync(Guid gear, CancellationToken cancellationToken = default)
    {
        var readings = await store.Gear.Readings.ListAsync(gear, cancellationToken);
        List<DrawReading> counted = [.. readings.Where(static one => !one.IsStruckOut).Select(static one => one.Reading)];
        return new LoadMeasurements(readings, DrawEstimate.Of(counted, DrawKind.Running), DrawEstimate.Of(counted, DrawKind.Starting));
    }

    /// <summary>Adds a reading of a load, and makes what all of its readings come to the library's figure.</summary>
    /// <param name="gear">Which piece.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <returns>What the readings come to, and the piece after it.</returns>
    /// <exception cref="ArgumentException">The piece is no load, or the reading is below zero.</exception>
    /// <exception cref="StorageException">The medium failed; the reading may be kept already, and then counts the next time.</exception>
    public async Task<(LoadMeasurements Figures, GearOutcome Outcome)> MeasureAsync(
        Guid gear, DrawReading reading, CancellationToken cancellationToken = default)
    {
        if (await store.Gear.FindAsync(gear, cancellationToken) is { Content.Kind: not GearKind.Load })
            throw new ArgumentException("Only loads draw.", nameof(gear));
        if (await store.Gear.Readings.AddAsync(gear, reading, cancellationToken) is null)
            return (new LoadMeasurements([], null, null), new GearOutcome(GearState.Gone, null));
        return await FigureAsync(gear, cancellationToken);
    }

    /// <summary>Strikes a reading out, or takes it in again, and makes what the others come to the library's figure.</summary>
    /// <param name="gear">Whose reading it is.</param>
    /// <param name="reading">Which reading.</param>
    /// <param name="isStruckOut">Whether it is to be struck out.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public async Task<(LoadMeasurements Figures, GearOutcome Outcome)> StrikeOutAsync(
        Guid gear, Guid reading, bool isStruckOut, CancellationToken cancellationToken = default)
    {
        await store.Gear.Readings.StrikeOutAsync(reading, isStruckOut, cancellationToken);
        return await FigureAsync(gear, cancellationToken);
    }

    /// <summary>Says of the piece what its readings come to. A figure of which there are no readings stays.</summary>
    private async Task<(LoadMeasurements Figures, GearOutcome Outcome)> FigureAsync(Guid gear, CancellationToken cancellationToken)
    {
        for (var attempt = 1; ; attempt++)
        {
            var figures = await MeasuredAsync(gear, cancellationToken);
            if (await store.Gear.FindAsync(gear, cancellationToken) is not { IsRemoved: false } stored
                || new LibraryGear(stored).Piece?.Load is not { } load)
                return (figures, new GearOutcome(GearState.Gone, null));
            var measured = load with
            {
                Run = figures.Running?.Figure ?? load.Run,
                Start = figures.Starting is { } start ? new TimedCurrent(start.Figure, start.Duration ?? load.Start?.Duration) : load.Start,
            };
            var what = string.Join("; ", new[] { Say("run", figures.Running), Say("start", figures.Starting) }.OfType<string>());
            var outcome = await ChangeAsync(stored, GearPiece.Of(measured), stored.Content.Words, what, cancellationToken);
            if (outcome.State != GearState.Conflict || attempt == Attempts)
                return (figures, outcome);
        }
    }

    private static string? Say(string key, MeasuredDraw? draw) =>
        draw is null ? null : $"{key} {draw.Figure}: {DrawEstimate.Explain(draw)}";
}
