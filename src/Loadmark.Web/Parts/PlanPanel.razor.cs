using Loadmark.Core.Rigs;
using Loadmark.Planning;
using Loadmark.Planning.Explaining;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Search;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Sessions;
using Loadmark.Workshop.Solves;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Planning from the page.</summary>
public sealed partial class PlanPanel : ComponentBase, IDisposable
{
    private readonly HashSet<string> _without = new(StringComparer.Ordinal);
    private SolveJob<PlanAnswer, PlanProgress> _job = null!;
    private bool _fewestMoves;
    private bool _acrossBoards;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    [Inject] private SolveGate Gate { get; set; } = null!;
    [Inject] private TimeProvider Clock { get; set; } = null!;
    [Inject] private PageLimits Limits { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <summary>There where the plan was asked for on the way here: it begins at once then.</summary>
    [SupplyParameterFromQuery(Name = "now")] private string? Now { get; set; }

    /// <inheritdoc/>
    public void Dispose() => _job.Dispose();

    /// <inheritdoc/>
    protected override void OnInitialized() =>
        _job = new SolveJob<PlanAnswer, PlanProgress>(Gate, () => _ = InvokeAsync(StateHasChanged), Clock);

    /// <inheritdoc/>
    protected override Task OnAfterRenderAsync(bool firstRender) =>
        firstRender && Now is not null && View.Rig is { Supplies.Count: > 0, Loads.Count: > 0 } ? PlanAsync() : Task.CompletedTask;

    private void Use(string supply, ChangeEventArgs change)
    {
        if (change.Value is true)
            _without.Remove(supply);
        else
            _without.Add(supply);
    }

    private Task PlanAsync() => PlanAsync(View.Rig, T["planning the wiring"].Value);

    private Task TryAsync(PlanChange change) =>
        PlanAsync(change.Rig with { Wired = View.Rig.Wired, Signal = View.Rig.Signal }, change.Text);

    private async Task PlanAsync(Rig rig, string what)
    {
        var before = View.Rig;
        View.Show((RigPreview?)null);
        var options = new PlanOptions
        {
            Only = OnlyOf(rig),
            FewestMoves = _fewestMoves,
            AcrossBoards = _acrossBoards,
            Progress = _job,
            TimeLimit = Limits.SolveTime,
        };
        await _job.RunAsync(stop =>
        {
            var plan = RigPlanner.Plan(rig, options, stop);
            return new PlanAnswer(before, plan, PlanExplainer.Explain(plan, options, stop), what);
        });
        if (_job is { IsRunning: false, Fault: null, Answer: { } answer } && !answer.IsStale(View.Rig) && View.Rig != answer.Plan.Rig
            && answer.Plan.Rig.Wired is { Count: > 0 })
            View.Show(new RigPreview(answer.What, answer.Plan.Rig, RigSession.Judge(answer.Plan.Rig)));
    }

    private async Task TakeAsync()
    {
        if (_job.Answer is not { } answer)
            return;
        View.Show((RigPreview?)null);
        await View.Session.EditAsync(answer.What, answer.Plan.Rig);
    }

    /// <summary>Takes along what is not fed to where supplies are bought.</summary>
    private void CarryShortage() => View.Shortage =
        _job.Answer is { } answer ? new Shortage(answer.Explanation.Dark, OnlyOf(answer.Before), _acrossBoards) : null;

    private HashSet<string>? OnlyOf(Rig rig) => _without.Count == 0
        ? null
        : rig.Supplies.Items.Select(static supply => supply.Id).Where(id => !_without.Contains(id)).ToHashSet(StringComparer.Ordinal);

    private void LeaveAsync()
    {
        _job.Clear();
        View.Show((RigPreview?)null);
    }
}
