using Loadmark.Storage.Entities;
using Loadmark.Storage.Faults;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage.Seals;

/// <summary>Seals each row that is saved, keeps the totals of the tables in step, and looks at the seal of each row that is read.</summary>
internal sealed class SealInterceptor : SaveChangesInterceptor, IMaterializationInterceptor
{
    /// <summary>The one there is; a second would make a second set of all that EF prepares.</summary>
    public static readonly SealInterceptor Instance = new();

    private SealInterceptor()
    {
    }

    /// <inheritdoc/>
    public override InterceptionResult<int> SavingChanges(DbContextEventData eventData, InterceptionResult<int> result)
    {
        Seal((StorageContext)eventData.Context!);
        return result;
    }

    /// <inheritdoc/>
    public override ValueTask<InterceptionResult<int>> SavingChangesAsync(
        DbContextEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
    {
        Seal((StorageContext)eventData.Context!);
        return ValueTask.FromResult(result);
    }

    /// <inheritdoc/>
    public object InitializedInstance(MaterializationInterceptionData materializationData, object entity)
    {
        if (entity is SealedRow row && SealedType.Of(materializationData.EntityType) is var type && row.Seal != type.SealOf(row))
            throw DamageException.At(type.PlaceOf(row));
        return entity;
    }

    private static void Seal(StorageContext context)
    {
        var changes = new Dictionary<string, (long Rows, long Sum)>(StringComparer.Ordinal);
        foreach (var entry in context.ChangeTracker.Entries<SealedRow>())
        {
            if (entry.State is not (EntityState.Added or EntityState.Modified or EntityState.Deleted) || entry.Entity is TotalRow)
                continue;
            var type = SealedType.Of(entry.Metadata);
            var before = entry.State == EntityState.Added ? 0 : entry.OriginalValues.GetValue<long>(nameof(SealedRow.Seal));
            var after = entry.State == EntityState.Deleted ? 0 : entry.Entity.Seal = type.SealOf(entry.Entity);
            var (rows, sum) = changes.GetValueOrDefault(type.Table);
            var more = entry.State switch { EntityState.Added => 1, EntityState.Deleted => -1, _ => 0 };
            changes[type.Table] = (rows + more, unchecked(sum + after - before));
        }

        if (changes.Count == 0)
            return;
        var totals = context.Totals.AsTracking().ToDictionary(static total => total.Table, StringComparer.Ordinal);
        var sealing = SealedType.Of(context.Model.FindEntityType(typeof(TotalRow))!);
        foreach (var (table, (rows, sum)) in changes)
        {
            if (!totals.TryGetValue(table, out var total))
                throw DamageException.At($"the total of the table {table}");
            total.Rows += rows;
            total.Sum = unchecked(total.Sum + sum);
            total.Seal = sealing.SealOf(total);
        }
    }
}
