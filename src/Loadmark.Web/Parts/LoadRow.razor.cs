using Loadmark.Core.Checks;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;
using Loadmark.Files.Entry;
using Loadmark.Files.Forms;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Sessions;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>One load: its tag and label to type in, its figures with where they came from, and everything else when it is opened.</summary>
public sealed partial class LoadRow : ComponentBase
{
    private Load? _rated;
    private List<ShownFigure> _figures = [];
    private string? _tagFault;
    private (Load, Severity?, bool, bool, int, int)? _rendered;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    /// <summary>The load that the row shows.</summary>
    [Parameter, EditorRequired] public Load Load { get; set; } = null!;

    /// <summary>The load's place among the rig's loads, from 0.</summary>
    [Parameter, EditorRequired] public int Index { get; set; }

    /// <summary>The worst finding about it; null when there is none.</summary>
    [Parameter] public Severity? Severity { get; set; }

    /// <summary>Whether the row is lit, as the load is in the diagram.</summary>
    [Parameter] public bool IsLit { get; set; }

    /// <summary>Whether all that can be typed about the load is shown.</summary>
    [Parameter] public bool IsOpen { get; set; }

    /// <summary>Told which load is to be open; null for none.</summary>
    [Parameter] public EventCallback<string?> OnOpen { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (_rated == Load)
            return;
        (_rated, _figures, _tagFault) = (Load, GearFigures.Of(Load, LoadRating.Of(Load), T), null);
    }

    /// <inheritdoc/>
    protected override bool ShouldRender()
    {
        // A rig has many rows, and an edit changes one.
        var now = (Load, Severity, IsLit, IsOpen, Index, View.Rig.Loads.Count);
        if (_rendered == now && _tagFault is null)
            return false;
        _rendered = now;
        return true;
    }

    private Task OpenAsync() => OnOpen.InvokeAsync(Load.Id);

    private async Task RenameAsync(ChangeEventArgs change)
    {
        var id = (change.Value as string ?? "").Trim();
        _rendered = null;
        if (id == Load.Id)
            return;
        if (View.Rig.Loads.Items.Any(load => load.Id == id))
            _tagFault = T["Another load is called {0}.", id];
        else if (GearForm.ReadLoad(id, new Dictionary<string, string>()) is { Value: null } reading)
            _tagFault = reading.Faults.Values.FirstOrDefault() ?? T["This cannot be a tag."];
        else
            await View.Session.EditAsync(T["calling {0} {1}", Load.Id, id], View.Rig.RenameLoad(Load.Id, id));
    }

    private Task RelabelAsync(ChangeEventArgs change)
    {
        var text = (change.Value as string ?? "").Trim();
        return PutAsync(T["editing the label of {0}", Load.Id], Load with { Label = text.Length == 0 ? null : NameplateReader.Read(text) });
    }

    private Task SettleAsync(string piece, UnreadMeaning? meaning) =>
        meaning is { } known
            ? PutAsync(T["editing the label of {0}", Load.Id], UnreadPiece.Settle(Load, piece, known))
            : Task.CompletedTask;

    private async Task<IReadOnlyDictionary<string, string>> KeepAsync(IReadOnlyDictionary<string, string> values)
    {
        var reading = GearForm.ReadLoad(Load.Id, values);
        if (reading.Value is { } load)
            await PutAsync(T["editing {0}", Load.Id], load with { FromLibrary = Load.FromLibrary });
        return reading.Faults;
    }

    private Task PutAsync(string what, Load load) =>
        View.Session.EditAsync(what, View.Rig with { Loads = new ValueList<Load>(View.Rig.Loads.Items.SetItem(Index, load)) });

    private Task DuplicateAsync()
    {
        var id = FreeIds.Like(Load.Id, View.Rig.Loads.Items.Select(static load => load.Id));
        return View.Session.EditAsync(
            T["duplicating {0}", Load.Id],
            View.Rig with
            {
                Loads = new ValueList<Load>(View.Rig.Loads.Items.Insert(Index + 1, Load with { Id = id, FromLibrary = null })),
            });
    }

    private Task MoveAsync(int by)
    {
        var loads = View.Rig.Loads.Items.RemoveAt(Index).Insert(Index + by, Load);
        return View.Session.EditAsync(T["moving {0}", Load.Id], View.Rig with { Loads = new ValueList<Load>(loads) });
    }

    private Task RemoveAsync() => View.Session.EditAsync(T["removing {0}", Load.Id], View.Rig.RemoveLoad(Load.Id));
}
