using System.Collections.Immutable;
using Loadmark.Core.Readings;
using Loadmark.Storage.Entities;
using Loadmark.Storage.Faults;
using Loadmark.Storage.History;
using Loadmark.Storage.Sessions;
using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage.Gear;

/// <summary>What was measured of loads. A reading stays; one that is wrong is struck out, and may be taken in again.</summary>
public sealed class GearReadings
{
    private readonly Access _access;
    private readonly TimeProvider _clock;

    internal GearReadings(Access access, TimeProvider clock) => (_access, _clock) = (access, clock);

    /// <summary>The readings of a piece, struck out ones too, the oldest first.</summary>
    /// <param name="gear">Which piece.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<ImmutableArray<StoredReading>> ListAsync(Guid gear, CancellationToken cancellationToken = default) =>
        _access.ReadAsync(
            async context =>
            {
                var rows = await context.GearReadings.AsNoTracking().Where(reading => reading.GearId == gear)
                    .OrderBy(reading => reading.Taken).ThenBy(reading => reading.Kind).ThenBy(reading => reading.Id)
                    .ToListAsync(cancellationToken);
                return rows.Select(Show).ToImmutableArray();
            },
            cancellationToken);

    /// <summary>Adds a reading.</summary>
    /// <param name="gear">Of which piece.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="cancellationToken">Gives up, with nothing added.</param>
    /// <returns>The reading as it is kept; null when there is no such piece, or it is removed.</returns>
    /// <exception cref="ArgumentException">The note is too long or not Unicode text, or a figure is below zero.</exception>
    /// <exception cref="StorageException">The medium failed; nothing is added.</exception>
    public Task<StoredReading?> AddAsync(Guid gear, DrawReading reading, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(reading);
        TextLimits.CheckWords(reading.Note ?? "", nameof(reading));
        if (reading.Current < Amps.Zero || reading.Duration < Seconds.Zero
            || reading.Meter is { } meter && (meter.Share < 0 || meter.Plus < Amps.Zero))
            throw new ArgumentException("A reading is zero or more.", nameof(reading));
        return _access.WriteAsync(
            async context =>
            {
                if (await context.Gear.FindAsync([gear], cancellationToken) is null or { IsRemoved: true })
                    return null;
                var row = new GearReadingRow
                {
                    Id = Guid.CreateVersion7(_clock.GetUtcNow()),
                    GearId = gear,
                    Kind = reading.Kind,
                    Current = reading.Current.Value,
                    Duration = reading.Duration?.Value,
                    MeterShare = reading.Meter?.Share,
                    MeterPlus = reading.Meter?.Plus.Value,
                    Taken = reading.Taken.UtcTicks,
                    Note = reading.Note,
                };
                context.GearReadings.Add(row);
                await context.SaveChangesAsync(cancellationToken);
                return Show(row);
            },
            cancellationToken);
    }

    /// <summary>Strikes a reading out, or takes it in again.</summary>
    /// <param name="id">Which reading.</param>
    /// <param name="isStruckOut">Whether it is to be struck out.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <returns>The reading after it; null when it never was.</returns>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public Task<StoredReading?> StrikeOutAsync(Guid id, bool isStruckOut, CancellationToken cancellationToken = default) =>
        _access.WriteAsync(
            async context =>
            {
                if (await context.GearReadings.FindAsync([id], cancellationToken) is not { } row)
                    return null;
                row.Removed = isStruckOut ? row.Removed ?? _clock.GetUtcNow().UtcTicks : null;
                await context.SaveChangesAsync(cancellationToken);
                return Show(row);
            },
            cancellationToken);

    private static StoredReading Show(GearReadingRow row) => new(
        row.Id,
        new DrawReading
        {
            Kind = row.Kind,
            Current = new Amps(row.Current),
            Duration = row.Duration is { } seconds ? new Seconds(seconds) : null,
            Meter = row is { MeterShare: { } share, MeterPlus: { } plus } ? new MeterAccuracy(share, new Amps(plus)) : null,
            Taken = StoredRigEdits.Moment(row.Taken),
            Note = row.Note,
        },
        row.Removed is not null);
}
