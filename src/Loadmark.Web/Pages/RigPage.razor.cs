using Loadmark.Core.Rigs;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Web.Parts;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.Sessions;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;
using Microsoft.JSInterop;
using MudBlazor;

namespace Loadmark.Web.Pages;

/// <summary>One rig: its diagram, and beside it what is being done with it.</summary>
public sealed partial class RigPage : ComponentBase
{
    private const string Findings = "findings";
    private const string Gear = "gear";

    private static readonly (string Part, string Name)[] Parts =
        [
            (Findings, "Findings"),
            (Gear, "Gear"),
            ("wire", "Wire"),
            ("plan", "Plan"),
            ("start", "Switch on"),
            ("buy", "Buy"),
            ("sheet", "Sheet"),
            ("accept", "Accept"),
            ("text", "File"),
        ];

    private RigSession? _session;
    private RigView? _view;
    private bool _isMissing;

    /// <summary>Whether the diagram is shown whole where it is a strip otherwise: on a narrow page.</summary>
    private bool _isDiagramOpen;
    private Guid _opened;

    /// <summary>
    /// The part that the rig's own address shows. It stays as it was when the rig was opened: entering the first load moves nobody
    /// elsewhere.
    /// </summary>
    private string _first = Findings;
    private PageScript<RigPage>? _script;

    /// <summary>The id of the rig that the page is about.</summary>
    [Parameter] public Guid Id { get; set; }

    /// <summary>
    /// What is being done: one of the parts, or null for what comes first, which is the gear of a rig without loads, and else the findings.
    /// </summary>
    [Parameter] public string? Part { get; set; }

    [Inject] private RigStore Store { get; set; } = null!;
    [Inject] private LibraryCache Cache { get; set; } = null!;
    [Inject] private NavigationManager Address { get; set; } = null!;
    [Inject] private IJSRuntime Browser { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    [Inject] private ISnackbar Notes { get; set; } = null!;
    [Inject] private IDialogService Dialogs { get; set; } = null!;

    private bool IsEmpty => _session?.Rig is { Loads.Count: 0, Supplies.Count: 0 };

    /// <summary>
    /// Whether the page is one sheet to enter gear on: there is nothing to draw as long as there are not both loads and supplies.
    /// </summary>
    private bool IsSheet =>
        Shown == Gear && _session?.Rig is ({ Loads.Count: 0 } or { Supplies.Count: 0 }) and { Wired: not { Count: > 0 } };

    private string Shown => Parts.Any(part => part.Part == Part) ? Part! : _first;

    /// <summary>What the page is about, in a few words.</summary>
    private string Title =>
        _isMissing
            ? T["This rig is not here"]
            : _view is null ? T["Opening the rig"] : Name;

    /// <summary>What the rig is called, as it may be shown; empty until it is opened.</summary>
    private string Name => SafeText.Clean(_session?.Rig?.Name ?? _session?.Kept?.Name ?? "");

    private static string? Told(string? what) => what is null ? null : SafeText.Clean(what);

    /// <summary>Told by the browser when a key of the whole page is pressed.</summary>
    /// <param name="key">"undo", "redo" or "keys".</param>
    [JSInvokable]
    public Task KeyAsync(string key) => InvokeAsync(() => key switch
    {
        "undo" => _session?.UndoAsync() ?? Task.CompletedTask,
        "redo" => _session?.RedoAsync() ?? Task.CompletedTask,
        _ => (Task)ShowKeysAsync(),
    });

    /// <summary>Told by the browser, now and then while the page is seen, to look whether the rig was changed elsewhere.</summary>
    [JSInvokable]
    public Task FollowAsync() => InvokeAsync(async () =>
    {
        try
        {
            if (_session is { } session && await session.FollowAsync() && ReferenceEquals(session, _session))
                Notes.Add(
                    T["Changed elsewhere, and shown here: {0}.", session.Kept?.UndoWhat ?? T["an edit taken back"].Value],
                    MudBlazor.Severity.Info);
        }
        catch (StorageException)
        {
            // The next edit will tell; what is shown stays as it was.
        }
    });

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        _session?.Dispose();
        return _script?.DisposeAsync() ?? ValueTask.CompletedTask;
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (_opened == Id)
            return;
        _opened = Id;
        _session?.Dispose();
        var session = new RigSession(Store, Cache);
        _isMissing = !await session.OpenAsync(Id);
        if (_isMissing)
        {
            session.Dispose();
            (_session, _view) = (null, null);
            return;
        }

        var view = new RigView(session);
        session.Changed += (_, _) => _ = InvokeAsync(() =>
        {
            view.Follow();
            StateHasChanged();
        });
        view.Changed += (_, _) => _ = InvokeAsync(StateHasChanged);

        // Decided here and not by going to another address: a page that is left while it is drawn for the first time may never come to
        // life.
        _first = session.Rig is { Loads.Count: 0 } ? Gear : Findings;
        (_session, _view) = (session, view);
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
            return;
        _script = new PageScript<RigPage>(Browser, this);
        await _script.WatchAsync("watchKeys");
        await _script.WatchAsync("watchNews");
    }

    private string AddressOf(string part) => part == Findings && _first == Findings ? $"rig/{Id}" : $"rig/{Id}/{part}";

    private Task<IDialogReference> ShowKeysAsync() => Dialogs.ShowAsync<KeysDialog>(T["Keys"]);


    /// <summary>
    /// An outlet in the diagram is picked to plug loads into, and with it the loads; anything else is looked up in the gear.
    /// </summary>
    private async Task PickAsync(SceneGroup part)
    {
        var view = _view!;
        switch (part.Kind)
        {
            case SubjectKind.Outlet when part.Subject.Split('/', 2) is [var supply, var outlet]:
                view.Pick(new OutletRef(supply, outlet));
                if (Shown != "wire")
                    Address.NavigateTo(AddressOf("wire"));
                break;
            case SubjectKind.Load when view.Picked is not null && Shown == "wire":
                if (await view.PlugAsync(part.Subject) is { } objection)
                {
                    Notes.Add(
                        T["Entered as it is plugged. {0} Undo takes it back.", objection.Message],
                        objection.Severity == Core.Checks.Severity.Harm ? MudBlazor.Severity.Error : MudBlazor.Severity.Warning);
                }

                break;
            case SubjectKind.Load or SubjectKind.Supply or SubjectKind.Lead when part.Subject.Length > 0:
                view.Light(part.Subject);
                if (Shown != Gear)
                    Address.NavigateTo(AddressOf(Gear));
                break;
        }
    }
}
