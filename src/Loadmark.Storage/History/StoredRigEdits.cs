using System.Linq.Expressions;
using Loadmark.Storage.Entities;
using Loadmark.Storage.Rigs;
using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage.History;

/// <summary>A rig's row with its edits, within one transaction: what each change does to them.</summary>
internal sealed class StoredRigEdits(StorageContext context, RigRow row, TimeProvider clock, int editsKept)
{
    private string? _text;

    /// <summary>The text as it is now, unpacked once.</summary>
    public string Text => _text ??= TextPacking.Unpack(row.Text);

    public static DateTimeOffset Moment(long ticks) => new(ticks, TimeSpan.Zero);

    public static StoredRig Show(RigRow row, string? undo, string? redo) => Show(row, TextPacking.Unpack(row.Text), undo, redo);

    public async Task<StoredRig> ShowAsync(CancellationToken cancellationToken)
    {
        var words = await context.Edits.AsNoTracking()
            .Where(edit => edit.RigId == row.Id && (edit.Number == row.Present || edit.Number == row.Present + 1))
            .ToDictionaryAsync(edit => edit.Number, edit => edit.What, cancellationToken);
        return Show(row, Text, words.GetValueOrDefault(row.Present), words.GetValueOrDefault(row.Present + 1));
    }

    public async Task EditAsync(string name, string text, string what, CancellationToken cancellationToken)
    {
        if (name == row.Name && text == Text)
            return;

        await ForgetAsync(edit => edit.Number > row.Present, cancellationToken);
        var (change, nameBefore, number) = (TextChange.Between(Text, text), row.Name, row.Present + 1);
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
        await ForgetAsync(edit => edit.Number <= number - editsKept, cancellationToken);
    }

    public async Task UndoAsync(CancellationToken cancellationToken)
    {
        if (await FindEditAsync(row.Present, cancellationToken) is { } edit)
            Become(edit.NameBefore, ChangeOf(edit).Undo(Text), edit.Number - 1);
    }

    public async Task RedoAsync(CancellationToken cancellationToken)
    {
        if (await FindEditAsync(row.Present + 1, cancellationToken) is { } edit)
            Become(edit.NameAfter, ChangeOf(edit).Redo(Text), edit.Number);
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

    private static StoredRig Show(RigRow row, string text, string? undo, string? redo) => new()
    {
        Id = row.Id,
        Name = row.Name,
        Text = text,
        Revision = row.Revision,
        UndoWhat = undo,
        RedoWhat = redo,
        Changed = Moment(row.Changed),
    };

    private static TextChange ChangeOf(EditRow edit) =>
        new(edit.Start, TextPacking.Unpack(edit.Before), TextPacking.Unpack(edit.After));

    private Task<EditRow?> FindEditAsync(long number, CancellationToken cancellationToken) =>
        context.Edits.AsNoTracking().FirstOrDefaultAsync(edit => edit.RigId == row.Id && edit.Number == number, cancellationToken);

    /// <summary>One by one, because the table's total tells which rows there are.</summary>
    private async Task ForgetAsync(Expression<Func<EditRow, bool>> which, CancellationToken cancellationToken) =>
        context.Edits.RemoveRange(await context.Edits.Where(edit => edit.RigId == row.Id).Where(which).ToListAsync(cancellationToken));

    private void Become(string name, string text, long present)
    {
        row.Name = name;
        (row.Text, _text) = (TextPacking.Pack(text), text);
        row.Present = present;
        Touch();
    }

    private void Touch()
    {
        row.Revision++;
        row.Changed = clock.GetUtcNow().UtcTicks;
    }
}
