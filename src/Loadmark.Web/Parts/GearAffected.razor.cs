using Loadmark.Storage.Faults;
using Loadmark.Storage.Rigs;
using Loadmark.Web.Texts;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>
/// "This figure changed": the rigs that it means something to, each with its verdict before and after, and what to do about it.
/// </summary>
public sealed partial class GearAffected : ComponentBase
{
    private const int MostShown = 50;

    private readonly List<AffectedRig> _rigs = [];
    private readonly CancellationTokenSource _stop = new();
    private bool _isDone;
    private string? _fault;
    private string? _said;

    /// <summary>The piece of gear whose rigs are looked at.</summary>
    [Parameter, EditorRequired] public LibraryGear Gear { get; set; } = null!;

    [Inject] private AffectedRigs Affected { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        try
        {
            await foreach (var rig in Affected.FindAsync(Gear, _stop.Token))
            {
                _rigs.Add(rig);
                if (_rigs.Count % 10 == 1)
                    StateHasChanged();
            }

            // As they are done is no order; by name is.
            _rigs.Sort(static (one, other) => string.Compare(one.Rig.Name, other.Rig.Name, StringComparison.OrdinalIgnoreCase));
        }
        catch (OperationCanceledException)
        {
            return;
        }
        catch (StorageException fault)
        {
            _fault = fault.Message;
        }

        _isDone = true;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _stop.Cancel();
        _stop.Dispose();
    }

    /// <summary>How many rigs have other figures of the piece, and in how many it may be another piece.</summary>
    private string Heading
    {
        get
        {
            var doubtful = _rigs.Count(static rig => rig.IsInDoubt);
            var plain = _rigs.Count - doubtful;
            var differ = T[plain == 1 ? "Its figures differ from those in {0} rig" : "Its figures differ from those in {0} rigs", plain];
            var doubt = T[
                doubtful == 1
                    ? "{0} rig has a piece of this tag that may be another"
                    : "{0} rigs have a piece of this tag that may be another",
                doubtful];
            return doubtful == 0 ? differ : plain == 0 ? doubt : $"{differ}; {doubt}";
        }
    }

    private async Task DecideAsync(AffectedRig rig, bool takesNew)
    {
        (_fault, _said) = (null, null);
        try
        {
            var state = takesNew ? await Affected.TakeNewAsync(rig, Gear) : await Affected.KeepOldAsync(rig, Gear);
            if (state == SaveState.Saved)
            {
                _rigs.Remove(rig);
                _said = takesNew
                    ? T["{0} has the new figures. Undo on its page takes that back.", rig.Rig.Name]
                    : T["{0} keeps the old figures.", rig.Rig.Name];
            }
            else
            {
                _fault = T["{0} was changed elsewhere meanwhile, and is left as it is. Load this page again to look anew.", rig.Rig.Name];
            }
        }
        catch (Exception fault) when (fault is StorageException or ArgumentException)
        {
            _fault = fault.Message;
        }
    }
}
