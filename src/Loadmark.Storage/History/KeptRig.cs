using Loadmark.Storage.Entities;
using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage.History;

/// <summary>A rig's row with its edits, within one transaction: what each change does to them.</summary>
internal sealed class KeptRig(StorageContext context, RigRow row, TimeProvider clock, int editsKept)
{
    public static DateTimeOffset Moment(long ticks) => new(ticks, TimeSpan.Zero);

    public static StoredRig Show(RigRow row, string? undo, string? redo) => new()
    {
        Id = row.Id,
        Name = row.Name,
        Text = TextPacking.Unpack(row.Text),
        Revision = row.Revision,
        UndoWhat = undo,
        RedoWhat = redo,
        Changed = Moment(row.Changed),
    };

    public async Task<StoredRig> ShowAsync(CancellationToken cancellationToken)
    {
        var words = await context.Edits
            .Where(edit => edit.RigId == row.Id && (edit.Number == row.Present || edit.Number == row.Present + 1))
            .ToDictionaryAsync(edit => edit.Number, edit => edit.What, cancellationToken);
        return Show(row, words.GetValueOrDefault(row.Present), words.GetValueOrDefault(row.Present + 1));
    }

    public async Task EditAsync(string name, string text, string what, CancellationToken cancellationToken)
    {
        var before = TextPacking.Unpack(row.Text);
        if (name == row.Name && text == before)
            return;

        await context.Edits.Where(edit => edit.RigId == row.Id && edit.Number > row.Present).ExecuteDeleteAsync(cancellationToken);
        var (change, nameBefore, number) = (TextChange.Between(before, text), row.Name, row.Present + 1);
        Become(name, text, number);
        context.Edits.Add(new EditRow
        {
            RigId = row.Id,
            Number = number,
            What = what,
            Made = row.Changed,
            NameBefore = nameBefore,
            NameAfter = name,
            Start = change.Start,
            Before = TextPacking.Pack(change.Before),
            After = TextPacking.Pack(change.After),
        });
        await context.Edits.Where(edit => edit.RigId == row.Id && edit.Number <= number - editsKept).ExecuteDeleteAsync(cancellationToken);
    }

    public async Task UndoAsync(CancellationToken cancellationToken)
    {
        if (await FindEditAsync(row.Present, cancellationToken) is { } edit)
            Become(edit.NameBefore, ChangeOf(edit).Undo(TextPacking.Unpack(row.Text)), edit.Number - 1);
    }

    public async Task RedoAsync(CancellationToken cancellationToken)
    {
        if (await FindEditAsync(row.Present + 1, cancellationToken) is { } edit)
            Become(edit.NameAfter, ChangeOf(edit).Redo(TextPacking.Unpack(row.Text)), edit.Number);
    }

    public Task RemoveAsync(CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        Touch();
        row.Removed = row.Changed;
        return Task.CompletedTask;
    }

    public Task RestoreAsync(CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        if (row.Removed is null)
            return Task.CompletedTask;

        Touch();
        row.Removed = null;
        return Task.CompletedTask;
    }

    private static TextChange ChangeOf(EditRow edit) =>
        new(edit.Start, TextPacking.Unpack(edit.Before), TextPacking.Unpack(edit.After));

    private Task<EditRow?> FindEditAsync(long number, CancellationToken cancellationToken) =>
        context.Edits.AsNoTracking().FirstOrDefaultAsync(edit => edit.RigId == row.Id && edit.Number == number, cancellationToken);

    private void Become(string name, string text, long present)
    {
        row.Name = name;
        row.Text = TextPacking.Pack(text);
        row.Present = present;
        Touch();
    }

    private void Touch()
    {
        row.Revision++;
        row.Changed = clock.GetUtcNow().UtcTicks;
    }
}
