using System.Collections.Immutable;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;
using Loadmark.Web.Texts;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Every change of a piece of gear, the last first; each can be gone back to, which is a change again.</summary>
public sealed partial class GearHistory : ComponentBase
{
    private const int MostShown = 100;

    private ImmutableArray<GearChange> _history = [];
    private (Guid, long) _read;
    private string? _fault;

    /// <summary>The piece of gear whose changes are shown.</summary>
    [Parameter, EditorRequired] public LibraryGear Gear { get; set; } = null!;

    /// <summary>Told when the piece was changed.</summary>
    [Parameter] public EventCallback OnChanged { get; set; }

    [Inject] private Store Store { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (_read == (Gear.Id, Gear.Stored.Revision))
            return;
        _read = (Gear.Id, Gear.Stored.Revision);
        try
        {
            _history = await Store.Gear.HistoryAsync(Gear.Id);
        }
        catch (StorageException fault)
        {
            _fault = fault.Message;
        }
    }

    private string What(GearChange change) => (change.Before, change.After) switch
    {
        (null, not null) when change.Number == _history[0].Number => T["added: {0}", change.What],
        _ => change.What,
    };

    private async Task GoBackAsync(long number)
    {
        try
        {
            var outcome = await Store.Gear.PutBackAsync(Gear.Id, Gear.Stored.Revision, number);
            _fault = outcome.State switch
            {
                GearState.Saved => null,
                GearState.TagTaken =>
                    T["Another piece of gear is called {0} now. Call that one otherwise first.", outcome.Gear!.Content.Tag].Value,
                _ => T["This gear was changed elsewhere meanwhile. It is shown as it is kept now; your last change was not made."].Value,
            };
        }
        catch (StorageException fault)
        {
            _fault = fault.Message;
        }

        await OnChanged.InvokeAsync();
    }
}
