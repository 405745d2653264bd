using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;
using Loadmark.Files.Forms;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>One lead of the rig: its name, its facts, and the fields that can be typed.</summary>
public sealed partial class LeadRow : ComponentBase
{
    private bool _isOpen;
    private string? _fault;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    /// <summary>The lead that the row shows.</summary>
    [Parameter, EditorRequired] public Lead Lead { get; set; } = null!;

    /// <summary>The lead's place among the rig's leads, from 0.</summary>
    [Parameter, EditorRequired] public int Index { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private string TypeWord => GearForm.ValuesOf(Lead)["type"];

    private string Facts =>
        string.Join(
            ", ",
            new[]
            {
                Lead.Plugs is { } plugs ? T["{0} plugs", plugs].Value : null,
                Lead.Length?.ToString(),
                Lead.Count is > 1 ? $"× {Lead.Count}" : null,
            }.OfType<string>());

    private async Task RenameAsync(ChangeEventArgs change)
    {
        var id = (change.Value as string ?? "").Trim();
        _fault = null;
        if (id == Lead.Id)
            return;
        if (View.Rig.Leads.Items.Any(lead => lead.Id == id))
            _fault = T["Another lead is called {0}.", id];
        else if (GearForm.ReadLead(id, new Dictionary<string, string>()) is { Value: null } reading)
            _fault = reading.Faults.Values.FirstOrDefault() ?? T["This cannot be a name."];
        else
            await View.Session.EditAsync(T["calling {0} {1}", Lead.Id, id], View.Rig.RenameLead(Lead.Id, id));
    }

    private async Task<IReadOnlyDictionary<string, string>> KeepAsync(IReadOnlyDictionary<string, string> values)
    {
        var reading = GearForm.ReadLead(Lead.Id, values);
        if (reading.Value is { } lead)
            await View.Session.EditAsync(
                T["editing {0}", Lead.Id], View.Rig with { Leads = new ValueList<Lead>(View.Rig.Leads.Items.SetItem(Index, lead)) });
        return reading.Faults;
    }

    private Task RemoveAsync() => View.Session.EditAsync(T["removing {0}", Lead.Id], View.Rig.RemoveLead(Lead.Id));
}
