using Loadmark.Core.Checks;
using Loadmark.Core.Texts;
using Loadmark.Core.Trials;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Sessions;
using Loadmark.Workshop.Solves;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>What the program has to say about the rig, worst first.</summary>
public sealed partial class FindingsPanel : ComponentBase
{
    private readonly LatestOnly<IReadOnlyList<Trial>> _search = new();
    private string? _open;
    private IReadOnlyList<Trial>? _remedies;
    private CheckResult? _seen;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    public void Dispose() => _search.Dispose();

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (ReferenceEquals(_seen, View.Check))
            return;
        (_seen, _remedies) = (View.Check, null);
        if (_open is { } open
            && View.Check.Findings.Items.FirstOrDefault(finding => $"{finding.Rule} {finding.Subjects}" == open) is { } finding)
            await SearchAsync(finding);
    }

    private async Task OpenAsync(string key, Finding finding)
    {
        (_open, _remedies) = (_open == key ? null : key, null);
        View.BringIntoSight(_open is null ? [] : finding.Subjects.Items);
        if (_open is not null)
            await SearchAsync(finding);
    }

    /// <summary>Each change is judged by every rule, and the circuit solved for it: aside, so that the page goes on.</summary>
    private async Task SearchAsync(Finding finding)
    {
        var (rig, check) = (View.Rig, View.Check);
        if (await _search.RunAsync(stop => RemedyTrials.Find(rig, check, finding, RigSession.Judge, stop)) is { } remedies)
            _remedies = remedies;
    }

    private void Unlight() => View.Light();

    private Task ApplyAsync(Trial remedy) => View.Session.EditAsync(SentenceCase.Small(remedy.What), remedy.Rig);
}
