using Loadmark.Files.Forms;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>The rig as a whole: name, mains, headroom.</summary>
public sealed partial class RigFacts : ComponentBase
{
    private string? _nameFault;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <summary>What the part is about, with what of it is set, so that nobody has to open it to see.</summary>
    private string Summary
    {
        get
        {
            List<string> set = [];
            if (View.Rig.Signal.Count > 0)
                set.Add(string.Join(" → ", View.Rig.Signal));
            foreach (var value in GearForm.ValuesOf(View.Rig).Where(static value => value.Value.Length > 0))
                set.Add($"{T[GearForm.TitleOf(value.Key)]} {value.Value}");
            return set.Count == 0 ? T["Name, signal path, mains and headroom of the rig"] : string.Join("; ", set);
        }
    }

    private async Task RenameAsync(ChangeEventArgs change)
    {
        var name = (change.Value as string ?? "").Trim();
        _nameFault = name.Length == 0 ? T["A rig needs a name."].Value : null;
        if (_nameFault is null)
            await View.Session.EditAsync(T["naming the rig"], View.Rig with { Name = name });
    }

    private Task OrderAsync(ChangeEventArgs change)
    {
        var words = (change.Value as string ?? "").Split(
            [',', ';', '→', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return View.Session.EditAsync(T["ordering the signal path"], View.Rig with { Signal = [.. words] });
    }

    private async Task<IReadOnlyDictionary<string, string>> KeepAsync(IReadOnlyDictionary<string, string> values)
    {
        var reading = GearForm.ReadRig(values);
        if (reading.Value is { } facts)
            await View.Session.EditAsync(T["editing mains and headroom"], View.Rig with { Mains = facts.Mains, Headroom = facts.Headroom });
        return reading.Faults;
    }
}
