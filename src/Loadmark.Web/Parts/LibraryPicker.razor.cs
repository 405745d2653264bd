using System.Collections.Immutable;
using Loadmark.Storage.Faults;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Adds gear of the library to a rig by typing part of its name; with the keyboard alone: arrows, Enter, Escape.</summary>
public sealed partial class LibraryPicker : ComponentBase
{
    private const int MostFound = 8;

    private ImmutableArray<LibraryGear> _found = [];
    private string _typed = "";
    private int _at;
    private bool _isLive = true;
    private string? _said;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    [Inject] private LibraryCache Cache { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private async Task FindAsync(ChangeEventArgs change)
    {
        (_typed, _at, _said) = (change.Value as string ?? "", 0, null);
        if (_typed.Trim().Length == 0)
        {
            _found = [];
            return;
        }

        try
        {
            _found = (await Cache.NowAsync()).Search(_typed, MostFound);
            _said = _found.Length == 0 ? T["No gear is like that."].Value : null;
        }
        catch (StorageException fault)
        {
            (_found, _said) = ([], fault.Message);
        }
    }

    private Task KeyAsync(KeyboardEventArgs key)
    {
        switch (key.Key)
        {
            case "ArrowDown" when _found.Length > 0:
                _at = (_at + 1) % _found.Length;
                break;
            case "ArrowUp" when _found.Length > 0:
                _at = (_at + _found.Length - 1) % _found.Length;
                break;
            case "Escape":
                (_found, _typed) = ([], "");
                break;
            case "Enter" when _found.Length > 0:
                return PickAsync(_found[_at]);
        }

        return Task.CompletedTask;
    }

    private async Task PickAsync(LibraryGear gear)
    {
        if (gear.Piece is not { } piece)
        {
            _said = T["What the library says of {0} cannot be read by this version of the program.", gear.Tag];
            return;
        }

        var isThere = GearUse.Find(View.Rig, gear.Kind, gear.Tag) is not null;
        (_found, _typed) = ([], "");
        await View.Session.EditAsync(T["adding {0} from the library", gear.Tag], GearUse.Put(View.Rig, piece, _isLive));
        _said = View.Session.Refusal is not null
            ? null
            : isThere ? T["{0} has the library's figures now.", gear.Tag].Value : T["{0} is added.", gear.Tag].Value;
    }
}
