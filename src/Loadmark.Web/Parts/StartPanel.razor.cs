using System.Globalization;
using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Spreading;
using Loadmark.Simulation.Wiring;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Sessions;
using Loadmark.Workshop.Solves;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Simulating from the page.</summary>
public sealed partial class StartPanel : ComponentBase, IDisposable
{
    private static readonly string[] Wires = ["0.08 mm²", "0.14 mm²", "0.22 mm²", "0.34 mm²", "0.5 mm²", "0.75 mm²", "1 mm²", "1.5 mm²"];
    private static readonly int[] SampleCounts = [200, 1000, 10_000];

    private readonly LatestOnly<CheckResult> _judgement = new();
    private SolveJob<StartAnswer, SpreadProgress> _start = null!;
    private SolveJob<SpreadResult, SpreadProgress> _spread = null!;
    private string _lead = "";
    private double? _metres;
    private string _wire = "";
    private int? _percent;
    private bool _ofStart;
    private int _samples = 1000;
    private SettleResult? _settled;
    private CheckResult? _trialCheck;
    private Rig? _solved;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    [Inject] private SolveGate Gate { get; set; } = null!;
    [Inject] private TimeProvider Clock { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private LeadTrial Trial => new(_lead.Length == 0 ? null : _lead, _metres, _wire.Length == 0 ? null : _wire, _percent);

    /// <inheritdoc/>
    public void Dispose()
    {
        _judgement.Dispose();
        _start.Dispose();
        _spread.Dispose();
        View.Show(null, "");
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        _start = new SolveJob<StartAnswer, SpreadProgress>(Gate, () => _ = InvokeAsync(StateHasChanged), Clock);
        _spread = new SolveJob<SpreadResult, SpreadProgress>(Gate, () => _ = InvokeAsync(StateHasChanged), Clock);
    }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (_solved == View.Rig)
            return;
        _solved = View.Rig;
        _start.Clear();
        _spread.Clear();
        Solve();
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private Rig RigOnTrial() => Trial.Apply(View.Rig);

    private void Solve()
    {
        var rig = RigOnTrial();
        _settled = rig.Wired is { Count: > 0 } ? RigSimulator.Settle(rig) : null;
        _trialCheck = Trial.IsNothing ? View.Check : NameplateCheck.Of(rig);
        if (!Trial.IsNothing)
            _ = JudgeAsync(rig);
    }

    /// <summary>What the circuit says follows when it is known: sliders move faster than some rigs are solved.</summary>
    private async Task JudgeAsync(Rig rig)
    {
        if (await _judgement.RunAsync(stop => RigAnalysis.Of(rig, AnalysisDepth.Verdict, stop).Check) is not { } check)
            return;
        _trialCheck = check;
        StateHasChanged();
    }

    private void Resolve()
    {
        Solve();
        _start.Clear();
        _spread.Clear();
        ShowSettled();
    }

    private void Stretch(ChangeEventArgs change)
    {
        if (double.TryParse(change.Value as string, NumberStyles.Float, CultureInfo.InvariantCulture, out var metres))
            _metres = Math.Clamp(metres, 0.1, 10);
        Resolve();
    }

    private void Reserve(ChangeEventArgs change)
    {
        if (int.TryParse(change.Value as string, NumberStyles.Integer, CultureInfo.InvariantCulture, out var percent))
            _percent = Math.Clamp(percent, 0, 60);
        Resolve();
    }

    private void ShowSettled()
    {
        if (_settled is { } settled)
            View.Show(SettledValues.Of(settled), T["settled volts and amps"]);
    }

    private void Back()
    {
        (_metres, _wire, _percent) = (null, "", null);
        Resolve();
        View.Show(null, "");
    }

    private async Task KeepAsync()
    {
        var rig = RigOnTrial();
        (_metres, _wire, _percent) = (null, "", null);
        await View.Session.EditAsync(T["changing leads or headroom"], rig);
    }

    private Task StartAsync()
    {
        var rig = RigOnTrial();
        return _start.RunAsync(stop =>
        {
            var circuit = RigCircuit.Of(WiredRig.Of(rig));
            return new StartAnswer(rig, circuit, RigSimulator.StartUp(circuit, cancellation: stop));
        });
    }

    private Task SpreadAsync()
    {
        var rig = RigOnTrial();
        var options = new SpreadOptions { Samples = _samples, Threads = 1, Progress = _spread };
        var ofStart = _ofStart;
        return _spread.RunAsync(stop =>
        {
            var circuit = RigCircuit.Of(WiredRig.Of(rig));
            return ofStart ? RigSpread.StartUp(circuit, options, cancellation: stop) : RigSpread.Settle(circuit, options, stop);
        });
    }
}
