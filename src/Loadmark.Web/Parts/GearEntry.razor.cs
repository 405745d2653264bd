using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Files.Entry;
using Loadmark.Files.Forms;
using Loadmark.Files.Library;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;
using Loadmark.Web.Texts;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Adds gear to the library by what is printed on it; how each line reads shows before it is taken.</summary>
public sealed partial class GearEntry : ComponentBase
{
    private const int MostShown = 10;

    private GearKind _kind = GearKind.Load;
    private string _text = "";
    private string _leadName = "";
    private string _leadType = "daisy chain";
    private string? _said;
    private bool _isWrong;

    /// <summary>The library that gear is entered into.</summary>
    [Parameter, EditorRequired] public GearSnapshot Library { get; set; } = null!;

    /// <summary>Told when something was added.</summary>
    [Parameter] public EventCallback OnAdded { get; set; }

    [Inject] private LibraryEditor Editor { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private EntryResult? Reading => _kind == GearKind.Lead || string.IsNullOrWhiteSpace(_text) ? null
        : LabelLines.Read(
            _text,
            new EntryTarget(
                _kind == GearKind.Load ? EntryKind.Loads : EntryKind.Supplies,
                [.. Library.Gear.Where(gear => gear.Kind == _kind).Select(static gear => gear.Tag)]));

    private List<GearPiece> Pieces => _kind == GearKind.Lead
        ? GearForm.ReadLead(_leadName.Trim(), new Dictionary<string, string> { ["type"] = _leadType }).Value is { } lead
            && _leadName.Trim().Length > 0 ? [GearPiece.Of(lead)] : []
        : [.. (Reading?.Rows ?? []).Where(static row => row.Refusal is null && row.Replaces.Count == 0)
            .Select(static row => row.Load is { } load ? GearPiece.Of(load) : GearPiece.Of(row.Supply!))];

    private void KindAsync(ChangeEventArgs change) => (_kind, _said) = (Enum.Parse<GearKind>((string)change.Value!), null);

    private string Reads(EntryRow row)
    {
        if (row.Supply is { } supply)
            return string.Join("; ", supply.Outlets.Items.Select(static outlet => $"{outlet.Id}: {outlet.Label.Text}"));
        var rating = LoadRating.Of(row.Load!);
        var volts = rating.Voltage.IsKnown ? FigureWords.Volts($"{rating.Voltage.Value}", rating.Form) : T["voltage not known"].Value;
        return $"{volts}, {rating.Running?.Value.ToString() ?? T["draw not known"].Value}";
    }

    private async Task AddAsync()
    {
        (_said, _isWrong) = (null, false);
        try
        {
            var (added, taken) = (new List<string>(), new List<string>());
            foreach (var piece in Pieces)
                ((await Editor.AddAsync(piece, [], T["typed on the page"])).State == GearState.Saved ? added : taken).Add(piece.Tag);
            (_text, _leadName) = taken.Count == 0 ? ("", "") : (_text, _leadName);
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
