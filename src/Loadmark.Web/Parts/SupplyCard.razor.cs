using Loadmark.Core.Checks;
using Loadmark.Core.Nameplates;
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

/// <summary>
/// One supply with its outlets: labels to type in, figures with where they came from, and everything else when it is opened.
/// </summary>
public sealed partial class SupplyCard : ComponentBase
{
    private bool _isOpen;
    private string? _openOutlet;
    private string? _fault;
    private string _more = "";
    private string? _moreFault;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    /// <summary>The supply that the card shows.</summary>
    [Parameter, EditorRequired] public Supply Supply { get; set; } = null!;

    /// <summary>The supply's place among the rig's supplies, from 0.</summary>
    [Parameter, EditorRequired] public int Index { get; set; }

    /// <summary>The worst finding about each thing, by its id.</summary>
    [Parameter, EditorRequired] public IReadOnlyDictionary<string, Severity> Severities { get; set; } = null!;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private void Open() => _isOpen = true;

    private async Task RenameAsync(ChangeEventArgs change)
    {
        var id = (change.Value as string ?? "").Trim();
        _fault = null;
        if (id == Supply.Id)
            return;
        if (View.Rig.Supplies.Items.Any(supply => supply.Id == id))
            _fault = T["Another supply is called {0}.", id];
        else if (GearForm.ReadSupply(id, new Dictionary<string, string>(), Supply) is { Value: null } reading)
            _fault = reading.Faults.Values.FirstOrDefault() ?? T["This cannot be a name."];
        else
            await View.Session.EditAsync(T["calling {0} {1}", Supply.Id, id], View.Rig.RenameSupply(Supply.Id, id));
    }

    private Task RelabelAsync(ChangeEventArgs change)
    {
        var text = (change.Value as string ?? "").Trim();
        var label = text.Length == 0 ? null : NameplateReader.Read(text);
        return PutAsync(
            T["editing the label of {0}", Supply.Id], Supply with { Label = label, Outlets = LabelledOutlets.After(Supply, label) });
    }

    private Task IsolateAsync(bool isIsolated) =>
        PutAsync(T["answering whether {0} is isolated", Supply.Id], Supply with { Isolated = isIsolated });

    private Task SettleAsync(string piece, UnreadMeaning? meaning) =>
        meaning is { } known
            ? PutAsync(T["editing the label of {0}", Supply.Id], UnreadPiece.Settle(Supply, piece, known))
            : Task.CompletedTask;

    private Task RelabelOutletAsync(int index, ChangeEventArgs change)
    {
        var outlet = Supply.Outlets[index];
        return PutOutletAsync(index, outlet with { Label = NameplateReader.Read((change.Value as string ?? "").Trim()) });
    }

    private async Task<IReadOnlyDictionary<string, string>> KeepAsync(IReadOnlyDictionary<string, string> values)
    {
        var reading = GearForm.ReadSupply(Supply.Id, values, Supply);
        if (reading.Value is { } supply)
            await PutAsync(T["editing {0}", Supply.Id], supply with { FromLibrary = Supply.FromLibrary });
        return reading.Faults;
    }

    private async Task<IReadOnlyDictionary<string, string>> KeepOutletAsync(int index, IReadOnlyDictionary<string, string> values)
    {
        var reading = GearForm.ReadOutlet(Supply.Outlets[index].Id, values);
        if (reading.Value is { } outlet)
            await PutOutletAsync(index, outlet);
        return reading.Faults;
    }

    private Task PutOutletAsync(int index, Outlet outlet) =>
        PutAsync(
            T["editing outlet {0}/{1}", Supply.Id, outlet.Id],
            Supply with { Outlets = new ValueList<Outlet>(Supply.Outlets.Items.SetItem(index, outlet)) });

    /// <summary>An edit may take a feed its outlet, a bank its last outlet, or an outlet the voltage that it is set to.</summary>
    private Task PutAsync(string what, Supply supply) =>
        View.Session.EditAsync(what, View.Rig.PutSupply(Index, supply));

    private Task DuplicateAsync()
    {
        var id = FreeIds.Like(Supply.Id, View.Rig.Supplies.Items.Select(static supply => supply.Id));
        return View.Session.EditAsync(
            T["duplicating {0}", Supply.Id],
            View.Rig with
            {
                Supplies = new ValueList<Supply>(View.Rig.Supplies.Items.Insert(Index + 1, Supply with { Id = id, FromLibrary = null })),
            });
    }

    private Task MoveAsync(int by) =>
        View.Session.EditAsync(
            T["moving {0}", Supply.Id],
            View.Rig with { Supplies = new ValueList<Supply>(View.Rig.Supplies.Items.RemoveAt(Index).Insert(Index + by, Supply)) });

    private Task RemoveAsync() => View.Session.EditAsync(T["removing {0}", Supply.Id], View.Rig.RemoveSupply(Supply.Id));

    private Task RemoveOutletAsync(OutletRef outlet) =>
        View.Session.EditAsync(T["removing outlet {0}", outlet], View.Rig.RemoveOutlet(outlet));

    private async Task AddOutletsAsync()
    {
        var typed = _more.Trim();
        if (typed.Length == 0)
            return;
        var (outlets, fault) = GearForm.ReadOutletLine(typed, Supply.Outlets);
        _moreFault = fault;
        if (fault is not null)
            return;
        _more = "";
        await PutAsync(T["adding outlets to {0}", Supply.Id], Supply with { Outlets = [.. Supply.Outlets, .. outlets] });
    }
}
