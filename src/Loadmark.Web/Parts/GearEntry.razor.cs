using System.Collections.Concurrent;
using Loadmark.Core.Gear;
using Loadmark.Files.Entry;
using Loadmark.Files.Forms;
using Loadmark.Files.Library;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;
using Loadmark.Web.Texts;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.TypedInput;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Adds gear to the library by what is printed on it; how each line reads shows before it is taken.</summary>
public sealed partial class GearEntry : ComponentBase
{
    private readonly EntryDraft _draft = new();

    /// <summary>What gear of each kind is called in rigs, so that no proposed tag is another's.</summary>
    private readonly ConcurrentDictionary<GearKind, IReadOnlySet<string>> _elsewhere = [];

    private GearSnapshot? _seen;
    private GearKind _kind = GearKind.Load;
    private string _leadName = "";
    private string _leadType = "daisy chain";
    private string? _said;
    private bool _isWrong;

    /// <summary>The library that gear is entered into.</summary>
    [Parameter, EditorRequired] public GearSnapshot Library { get; set; } = null!;

    /// <summary>Told when something was added.</summary>
    [Parameter] public EventCallback OnAdded { get; set; }

    [Inject] private Store Store { get; set; } = null!;
    [Inject] private LibraryCache Cache { get; set; } = null!;
    [Inject] private LibraryEditor Editor { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private string Example =>
        _kind == GearKind.Load ? "drive-3: 9V DC 12mA centre negative" : "brick: INPUT 100-240V~\n  1-4: 9 V 150 mA";

    private EntryTarget Target =>
        new(
            _kind == GearKind.Load ? EntryKind.Loads : EntryKind.Supplies,
            [.. Library.Gear.Where(gear => gear.Kind == _kind).Select(static gear => gear.Tag)])
        {
            Elsewhere = _elsewhere.GetValueOrDefault(_kind) ?? new HashSet<string>(),
        };

    private List<GearPiece> Pieces => _kind == GearKind.Lead
        ? GearForm.ReadLead(_leadName.Trim(), new Dictionary<string, string> { ["type"] = _leadType }).Value is { } lead
            && _leadName.Trim().Length > 0 ? [GearPiece.Of(lead)] : []
        :
        [
            .. _draft.Rows.Where(static row => row.Refusal is null && row.Replaces.Count == 0)
                .Select(static row => row.Load is { } load ? GearPiece.Of(load) : GearPiece.Of(row.Supply!)),
        ];

    /// <inheritdoc/>
    protected override void OnInitialized() => _ = Task.Run(LookElsewhereAsync);

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (ReferenceEquals(_seen, Library))
            return;
        _seen = Library;
        _draft.ReadAgain(Target);
    }

    /// <summary>Aside, since nothing that is shown waits for it.</summary>
    private async Task LookElsewhereAsync()
    {
        try
        {
            foreach (var kind in (GearKind[])[GearKind.Load, GearKind.Supply])
                _elsewhere[kind] = await TagsInStore.OfAsync(Store, Cache, kind);
        }
        catch (StorageException)
        {
            // Adding to the library will tell; a proposed tag may then be another's too.
        }
    }

    private void KindAsync(ChangeEventArgs change)
    {
        (_kind, _said) = (Enum.Parse<GearKind>((string)change.Value!), null);
        _draft.ReadAgain(Target);
    }

    private void Typed(string text)
    {
        _said = null;
        _draft.Type(text, Target);
    }

    private async Task AddAsync()
    {
        (_said, _isWrong) = (null, false);
        try
        {
            var (added, taken) = (new List<string>(), new List<string>());
            foreach (var piece in Pieces)
                ((await Editor.AddAsync(piece, [], T["typed on the page"])).State == GearState.Saved ? added : taken).Add(piece.Tag);
            if (taken.Count == 0)
            {
                _leadName = "";
                _draft.Leave(static row => row.Replaces.Count == 0, Target);
            }

            _isWrong = taken.Count > 0;
            _said = taken.Count > 0
                ? T["{0}: in the library already, and left as it is.", string.Join(", ", taken)]
                : T["{0}: in the library now.", string.Join(", ", added)];
        }
        catch (Exception fault) when (fault is StorageException or ArgumentException)
        {
            (_said, _isWrong) = (fault.Message, true);
        }

        await OnAdded.InvokeAsync();
    }
}
