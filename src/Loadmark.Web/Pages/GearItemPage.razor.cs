using System.Collections.Immutable;
using Loadmark.Core.Rigs;
using Loadmark.Files.Forms;
using Loadmark.Files.Library;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;
using Loadmark.Storage.Rigs;
using Loadmark.Web.Texts;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Pages;

/// <summary>One piece of gear of the library: what is said of it, what was measured, where it is used, and how it came to be so.</summary>
public sealed partial class GearItemPage : ComponentBase
{
    private const int MostRigs = 50;

    private static readonly Dictionary<string, string> NoFaults = [];

    private LibraryGear? _gear;
    private ImmutableArray<RigSummary> _rigs = [];
    private Guid _opened;
    private bool _isRead;
    private string? _trouble;
    private string? _tagFault;
    private string _outlets = "";
    private string? _outletsFault;

    /// <summary>The id of the piece that the page is about.</summary>
    [Parameter] public Guid Id { get; set; }

    [Inject] private Store Store { get; set; } = null!;
    [Inject] private LibraryEditor Editor { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (_opened == Id)
            return;
        _opened = Id;
        await LoadAsync();
    }

    private async Task LoadAsync()
    {
        try
        {
            var stored = await Store.Gear.FindAsync(Id);
            _gear = stored is null ? null : new LibraryGear(stored);
            _rigs = _gear is { } gear ? [.. (await Store.Gear.Uses.RigsWithAsync(gear.Kind, gear.Tag)).Select(static rig => rig.Rig)] : [];
        }
        catch (StorageException fault)
        {
            _trouble = fault.Message;
        }

        // A field is kept by the form that it is in, which draws itself only.
        _isRead = true;
        StateHasChanged();
    }

    private async Task<IReadOnlyDictionary<string, string>> KeepLoadAsync(IReadOnlyDictionary<string, string> values)
    {
        var reading = GearForm.ReadLoad(_gear!.Tag, values);
        return reading.Value is { } load ? await KeepAsync(GearPiece.Of(load)) : reading.Faults;
    }

    private async Task<IReadOnlyDictionary<string, string>> KeepLeadAsync(IReadOnlyDictionary<string, string> values)
    {
        var reading = GearForm.ReadLead(_gear!.Tag, values);
        return reading.Value is { } lead ? await KeepAsync(GearPiece.Of(lead)) : reading.Faults;
    }

    private async Task<IReadOnlyDictionary<string, string>> KeepSupplyAsync(IReadOnlyDictionary<string, string> values)
    {
        var supply = _gear!.Piece!.Supply!;
        var reading = GearForm.ReadSupply(_gear.Tag, values, supply);
        return reading.Value is { } read ? await KeepAsync(GearPiece.Of(read)) : reading.Faults;
    }

    private async Task<IReadOnlyDictionary<string, string>> KeepOutletAsync(int index, IReadOnlyDictionary<string, string> values)
    {
        var supply = _gear!.Piece!.Supply!;
        var reading = GearForm.ReadOutlet(supply.Outlets[index].Id, values);
        return reading.Value is { } outlet
            ? await KeepAsync(WithOutlets(supply, supply.Outlets.Items.SetItem(index, outlet)))
            : reading.Faults;
    }

    private async Task RemoveOutletAsync(int index)
    {
        var supply = _gear!.Piece!.Supply!;
        await KeepAsync(WithOutlets(supply, supply.Outlets.Items.RemoveAt(index)));
    }

    private async Task AddOutletsAsync()
    {
        var supply = _gear!.Piece!.Supply!;
        if (_outlets.Trim().Length == 0)
            return;
        var (outlets, fault) = GearForm.ReadOutletLine(_outlets.Trim(), supply.Outlets);
        _outletsFault = fault;
        if (fault is not null)
            return;
        _outlets = "";
        await KeepAsync(WithOutlets(supply, supply.Outlets.Items.AddRange(outlets.Items)));
    }

    /// <summary>A bank that has lost its last outlet goes with it.</summary>
    private static GearPiece WithOutlets(Supply supply, ImmutableArray<Outlet> outlets) => GearPiece.Of(supply with
    {
        Outlets = new ValueList<Outlet>(outlets),
        Banks = [.. supply.Banks.Items.Where(bank => outlets.Any(outlet => outlet.Bank == bank.Name))],
    });

    private async Task RenameAsync(ChangeEventArgs change)
    {
        var tag = (change.Value as string ?? "").Trim();
        _tagFault = null;
        if (tag.Length == 0 || tag == _gear!.Tag)
            return;
        var reading = GearText.Read(_gear.Kind, tag, _gear.Stored.Content.Text);
        if (reading.Piece is { } piece)
            await KeepAsync(piece);
        else
            _tagFault = reading.Errors[0].Message;
    }

    private async Task FileAsync(ChangeEventArgs change) =>
        await KeepAsync(_gear!.Piece!, [.. GearWords.WordsIn(change.Value as string ?? "")]);

    /// <summary>Keeps what is said of it now; another page's change in between is shown and not gone over.</summary>
    private async Task<IReadOnlyDictionary<string, string>> KeepAsync(GearPiece piece, ValueList<string>? words = null)
    {
        (_trouble, _tagFault) = (null, null);
        try
        {
            var outcome = await Editor.ChangeAsync(_gear!.Stored, piece, words ?? _gear.Stored.Content.Words, T["typed on the page"]);
            switch (outcome.State)
            {
                case GearState.TagTaken:
                    _tagFault = T["Another piece of gear is called {0}.", piece.Tag];
                    return new Dictionary<string, string> { [""] = _tagFault };
                case GearState.Conflict or GearState.Gone:
                    _trouble =
                        T["This gear was changed elsewhere meanwhile. It is shown as it is kept now; your last change was not made."];
                    break;
            }

            await LoadAsync();
            return NoFaults;
        }
        catch (Exception fault) when (fault is StorageException or ArgumentException)
        {
            return new Dictionary<string, string> { [""] = fault.Message };
        }
    }

    private Task RemoveAsync() => DoAsync(() => Store.Gear.RemoveAsync(Id, _gear!.Stored.Revision));

    private Task PutBackAsync() => DoAsync(() => Store.Gear.RestoreAsync(Id));

    private async Task DoAsync(Func<Task<GearOutcome>> change)
    {
        try
        {
            var outcome = await change();
            _trouble = outcome.State switch
            {
                GearState.Saved => null,
                GearState.TagTaken =>
                    T["Another piece of gear is called {0} now. Call that one otherwise first.", outcome.Gear!.Content.Tag].Value,
                _ => T["This gear was changed elsewhere meanwhile. It is shown as it is kept now; your last change was not made."].Value,
            };
            await LoadAsync();
        }
        catch (StorageException fault)
        {
            _trouble = fault.Message;
        }
    }
}
