using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Files.Library;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Pages;

/// <summary>The gear library: all of it, what somebody looks for in it, and the ways in and out.</summary>
public sealed partial class GearPage : ComponentBase
{
    /// <summary>How much of the list is drawn at once.</summary>
    private const int Step = 100;

    private GearSnapshot _library = GearSnapshot.Empty;
    private IReadOnlyDictionary<(GearKind, string), int> _uses = new Dictionary<(GearKind, string), int>();
    private ImmutableArray<LibraryGear> _found = [];
    private ImmutableArray<(string Word, int Count)> _words = [];
    private string _find = "";
    private string _filter = "";
    private string _word = "";
    private int _most = Step;
    private GearFileResult? _import;
    private string _importName = "";
    private string? _trouble;

    [Inject] private Store Store { get; set; } = null!;
    [Inject] private LibraryCache Cache { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    protected override Task OnInitializedAsync() => LoadAsync();

    private async Task LoadAsync()
    {
        try
        {
            _library = await Cache.NowAsync();
            _uses = await Store.Gear.Uses.CountAsync();
            _trouble = null;
        }
        catch (StorageException fault)
        {
            _trouble = fault.Message;
        }

        _words =
        [
            .. _library.Gear.SelectMany(static gear => gear.Stored.Content.Words)
            .GroupBy(static word => word, StringComparer.OrdinalIgnoreCase)
                .Select(static group => (group.Key, group.Count())).OrderBy(static word => word.Key, StringComparer.OrdinalIgnoreCase),
        ];
        Show();
    }

    private void FindAsync(ChangeEventArgs change)
    {
        (_find, _most) = (change.Value as string ?? "", Step);
        Show();
    }

    private void FilterAsync(ChangeEventArgs change)
    {
        (_filter, _most) = (change.Value as string ?? "", Step);
        Show();
    }

    private void WordAsync(ChangeEventArgs change)
    {
        (_word, _most) = (change.Value as string ?? "", Step);
        Show();
    }

    private void Show()
    {
        GearKind? kind = Enum.TryParse<GearKind>(_filter, out var one) ? one : null;
        var found = _library.Search(_find, _library.Gear.Length, kind);
        _found = _word.Length == 0
            ? found
            : [.. found.Where(gear => gear.Stored.Content.Words.Items.Contains(_word, StringComparer.OrdinalIgnoreCase))];
    }

    private string Used(LibraryGear gear) => _uses.GetValueOrDefault((gear.Kind, GearTag.KeyOf(gear.Tag))) switch
    {
        0 => "",
        1 => T["in 1 rig"],
        var count => T["in {0} rigs", count],
    };

    private async Task OpenAsync(InputFileChangeEventArgs chosen)
    {
        (_import, _importName) = (null, chosen.File.Name);
        if (await ChosenFile.ReadTextAsync(chosen.File, GearFileReader.MostBytes) is { } text)
        {
            _library = await Cache.NowAsync();
            _import = GearFileReader.Read(text, chosen.File.Name);
            _trouble = null;
        }
        else
        {
            _trouble = T["{0} is over 16 MiB, or is not a text in UTF-8.", chosen.File.Name];
        }
    }

    private Task CloseImportAsync()
    {
        _import = null;
        return LoadAsync();
    }
}
