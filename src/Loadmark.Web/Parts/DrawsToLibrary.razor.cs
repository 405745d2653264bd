using Loadmark.Core.Gear;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Readings;
using Loadmark.Storage.Acceptances;
using Loadmark.Storage.Faults;
using Loadmark.Web.Texts;
using Loadmark.Workshop.Accepting;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Puts measured draws into the gear library, each once.</summary>
public sealed partial class DrawsToLibrary : ComponentBase
{
    private List<Row> _rows = [];
    private StoredAcceptance? _shown;
    private string? _fault;

    /// <summary>Where the rig is measured; its shown record is signed.</summary>
    [Parameter, EditorRequired] public AcceptanceDesk Desk { get; set; } = null!;

    [Inject] private LibraryCache Cache { get; set; } = null!;
    [Inject] private LibraryEditor Editor { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (ReferenceEquals(_shown, Desk.Shown))
            return;
        _shown = Desk.Shown;
        await ListAsync();
    }

    private Task KeepAsync(Row row) => TryAsync(async () =>
    {
        await Editor.MeasureAsync(row.Gear!.Value, row.Reading);
        await ListAsync();
    });

    private Task ListAsync() => TryAsync(async () =>
    {
        var library = await Cache.NowAsync();
        var rows = new List<Row>();
        foreach (var (plug, reading) in AcceptedDraws.Of(Desk.Result!, _shown!))
        {
            var load = plug.Load.Rating.Load;
            var gear = library.Find(GearKind.Load, load.FromLibrary?.Id ?? load.Id)?.Id;
            var isThere = gear is { } id && (await Editor.MeasuredAsync(id)).Readings
                .Any(one => one.Reading.Note == reading.Note && one.Reading.Current == reading.Current);
            rows.Add(new Row(plug, reading, gear, isThere));
        }

        _rows = rows;
    });

    private async Task TryAsync(Func<Task> work)
    {
        _fault = null;
        try
        {
            await work();
        }
        catch (StorageException fault)
        {
            _fault = fault.Message;
        }
    }

    private sealed record Row(PlugPlace Plug, DrawReading Reading, Guid? Gear, bool IsThere);
}
