using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Files.Forms;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Sessions;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>The gear of a rig.</summary>
public sealed partial class GearPanel : ComponentBase
{
    private IReadOnlyDictionary<string, Severity> _worst = new Dictionary<string, Severity>();
    private CheckResult? _seen;
    private string _find = "";
    private string? _open;
    private string _leadType = "daisy chain";
    private int _plugs = 5;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    /// <summary>Whether it is the whole page, on which a rig begins: what is entered first stands first then.</summary>
    [Parameter] public bool IsSheet { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (ReferenceEquals(_seen, View.Check))
            return;
        _seen = View.Check;
        _worst = WorstBySubject.Of(View.Check);
    }

    private bool Matches(Load load)
    {
        var find = _find.Trim();
        return find.Length == 0
            || load.Id.Contains(find, StringComparison.OrdinalIgnoreCase)
            || load.Name?.Contains(find, StringComparison.OrdinalIgnoreCase) == true
            || load.Label?.Text.Contains(find, StringComparison.OrdinalIgnoreCase) == true;
    }

    private Task AddLeadAsync()
    {
        var names = View.Rig.Leads.Items.Select(static lead => lead.Id).ToList();
        var id = names.Contains(_leadType) ? FreeIds.Like(_leadType, names) : _leadType;
        var values = new Dictionary<string, string> { ["type"] = _leadType };
        if (_leadType == "daisy chain")
            values["plugs"] = $"{Math.Clamp(_plugs, 1, 1000)}";
        return GearForm.ReadLead(id, values).Value is { } lead
            ? View.Session.EditAsync(T["adding a lead"], View.Rig with { Leads = [.. View.Rig.Leads, lead] })
            : Task.CompletedTask;
    }
}
