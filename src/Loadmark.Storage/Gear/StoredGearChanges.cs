using Loadmark.Core.Gear;
using Loadmark.Storage.Entities;
using Loadmark.Storage.History;

namespace Loadmark.Storage.Gear;

/// <summary>A piece's row with its changes, within one transaction.</summary>
internal sealed class StoredGearChanges(StorageContext context, GearRow row, TimeProvider clock, LibraryCount count)
{
    public GearRow Row => row;

    public static StoredGear Show(GearRow row) => new()
    {
        Id = row.Id,
        Content = new GearContent
        {
            Kind = row.Kind,
            Tag = row.Tag,
            Name = row.Name,
            Label = row.Label,
            Words = Split(row.Words),
            Text = TextPacking.Unpack(row.Text),
        },
        Revision = row.Revision,
        Changed = StoredRigEdits.Moment(row.Changed),
        IsRemoved = row.IsRemoved,
    };

    public static GearContent? Show(GearKind kind, GearChangeRow change) => change.IsRemoved
        ? null
        : new GearContent
        {
            Kind = kind,
            Tag = change.Tag,
            Name = change.Name,
            Label = change.Label,
            Words = Split(change.Words),
            Text = TextPacking.Unpack(change.Text),
        };

    /// <summary>Says something else of the piece, or brings it back.</summary>
    public async Task BecomeAsync(GearContent content, string what, CancellationToken cancellationToken)
    {
        row.Tag = content.Tag;
        row.TagKey = GearTag.KeyOf(content.Tag);
        row.Name = content.Name;
        row.Label = content.Label;
        row.Words = string.Join('\n', content.Words.Items);
        row.Text = TextPacking.Pack(content.Text);
        row.IsRemoved = false;
        await KeepAsync(what, cancellationToken);
    }

    public async Task RemoveAsync(string what, CancellationToken cancellationToken)
    {
        row.TagKey = null;
        row.IsRemoved = true;
        await KeepAsync(what, cancellationToken);
    }

    private static Core.Rigs.ValueList<string> Split(string words) => [.. words.Split('\n', StringSplitOptions.RemoveEmptyEntries)];

    private async Task KeepAsync(string what, CancellationToken cancellationToken)
    {
        row.Revision++;
        row.Changed = clock.GetUtcNow().UtcTicks;
        row.Stamp = await count.NextAsync(cancellationToken);
        context.GearChanges.Add(new GearChangeRow
        {
            GearId = row.Id,
            Number = row.Revision,
            What = what,
            Made = row.Changed,
            Tag = row.Tag,
            Name = row.Name,
            Label = row.Label,
            Words = row.Words,
            IsRemoved = row.IsRemoved,
            Text = row.Text,
        });
    }
}
