using Loadmark.Core.Rigs;
using Loadmark.Files.Library;
using Loadmark.Storage.Faults;
using Loadmark.Web.Texts;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Takes a load or a supply of a rig into the library, or says that it is there.</summary>
public sealed partial class SaveToLibrary : ComponentBase
{
    private GearPiece? _compared;
    private ImportRow? _row;
    private bool _isLive;
    private string? _said;
    private bool _isWrong;

    /// <summary>The load; null where it is a supply.</summary>
    [Parameter] public Load? Load { get; set; }

    /// <summary>The supply; null where it is a load.</summary>
    [Parameter] public Supply? Supply { get; set; }

    /// <summary>The rig's name.</summary>
    [Parameter, EditorRequired] public string RigName { get; set; } = "";

    [Inject] private LibraryCache Cache { get; set; } = null!;
    [Inject] private LibraryEditor Editor { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private GearPiece Piece => Load is { } load ? GearPiece.Of(load) : GearPiece.Of(Supply!);

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _isLive = Load?.FromLibrary is not null || Supply?.FromLibrary is not null;
        if (_compared == Piece)
            return;
        _compared = Piece;
        await CompareAsync();
    }

    private async Task CompareAsync()
    {
        try
        {
            var rig = Load is { } load ? new Rig { Name = RigName, Loads = [load] } : new Rig { Name = RigName, Supplies = [Supply!] };
            _row = ImportPreview.Of(await Cache.NowAsync(), rig).Rows[0];
        }
        catch (StorageException fault)
        {
            (_said, _isWrong) = (fault.Message, true);
        }
    }

    private async Task KeepAsync()
    {
        try
        {
            var result = await Editor.TakeAsync(new ImportPreview([_row!]), static _ => true, T["from the rig {0}", RigName]);
            _isWrong = result.Overtaken.Length > 0;
            _said = _isWrong ? T["The library was changed meanwhile; nothing was kept."] : T["Kept."];
        }
        catch (Exception fault) when (fault is StorageException or ArgumentException)
        {
            (_said, _isWrong) = (fault.Message, true);
        }

        await CompareAsync();
    }
}
