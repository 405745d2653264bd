using Loadmark.Storage.Entities;

namespace Loadmark.Storage.Gear;

/// <summary>The library's count of changes, within one transaction.</summary>
internal sealed class LibraryCount(StorageContext context)
{
    private CountRow? _row;

    public async Task<long> NextAsync(CancellationToken cancellationToken)
    {
        _row ??= await context.Counts.FindAsync([CountRow.Gear], cancellationToken);
        if (_row is null)
            context.Counts.Add(_row = new CountRow { Name = CountRow.Gear });
        return ++_row.Value;
    }
}
