using System.Globalization;
using Loadmark.Core.Display;
using Loadmark.Drawing.Texts;
using Loadmark.Storage;
using Loadmark.Storage.Copies;
using Loadmark.Storage.Faults;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Backups on the page, and the ways back; also where what is kept cannot be opened.</summary>
public sealed partial class BackupPart : ComponentBase, IDisposable
{
    private IReadOnlyList<KeptCopy> _copies = [];
    private (string Question, Func<Task<List<string>>> Work)? _asked;
    private ElementReference _question;
    private ElementReference _answer;
    private Func<ElementReference>? _focusNext;
    private CancellationTokenSource _arrival = new();
    private double? _share;
    private bool _isBusy;
    private int _turn;
    private List<string> _said = [];

    /// <summary>Whether what is kept cannot be opened because it is damaged, or is none of ours.</summary>
    [Parameter] public bool IsDamaged { get; set; }

    /// <summary>Is told when what is kept has become something else.</summary>
    [Parameter] public EventCallback Restored { get; set; }

    [Inject] private Store Store { get; set; } = null!;
    [Inject] private PageLimits Limits { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    public void Dispose()
    {
        // Whoever leaves the page wants no more of a file that is still on its way.
        _arrival.Cancel();
        _arrival.Dispose();
    }

    /// <inheritdoc/>
    protected override void OnInitialized() => _copies = Store.Copies.Kept();

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (_focusNext is not { } next)
            return;
        _focusNext = null;
        await next().FocusAsync();
    }

    private static string Time(KeptCopy copy) => copy.Made.ToLocalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private string Why(CopyReason reason) => reason switch
    {
        CopyReason.BeforeUpgrade => T["before an upgrade"].Value,
        CopyReason.BeforeRestore => T["before restoring"].Value,
        _ => T["of the day"].Value,
    };

    private void Ask(KeptCopy copy) => Ask(
        T["Everything that is kept becomes what it was on {0}, in every window.", Time(copy)].Value,
        async () => Words(await Store.Copies.RestoreAsync(copy.File)));

    private void Ask(InputFileChangeEventArgs chosen)
    {
        var (file, named) = (chosen.File, SafeText.Clean(chosen.File.Name));
        if (file.Size > Limits.LargestBackup)
        {
            _said = [T["{0} has {1}. The page takes a backup of up to {2}; the command “loadmark restore” takes any.",
                named, FigureDisplay.Size(file.Size), FigureDisplay.Size(Limits.LargestBackup)].Value];
            Forget();
            return;
        }

        Ask(T["Everything that is kept becomes what is in {0}, in every window.", named].Value, () => RestoreAsync(file, named));
    }

    private void Ask(string question, Func<Task<List<string>>> work) =>
        (_asked, _focusNext, _said) = ((question, work), () => _question, []);

    private async Task<List<string>> RestoreAsync(IBrowserFile file, string named)
    {
        await using var content = file.OpenReadStream(Limits.LargestBackup, _arrival.Token);
        var progress = new Progress<long>(arrived => Show(arrived, file.Size));
        Show(0, file.Size);
        return Words(await Store.Copies.RestoreAsync(content, file.Size, named, progress, _arrival.Token));
    }

    /// <summary>Shows each hundredth that has arrived; once all of it has, the restoring begins, and cannot be given up any more.</summary>
    private void Show(long arrived, long size)
    {
        double? share = arrived < size ? Math.Floor(100.0 * arrived / size) / 100 : null;
        if (!_isBusy || share.Equals(_share))
            return;
        _share = share;
        StateHasChanged();
    }

    private void Cancel()
    {
        _arrival.Cancel();
        if (!_isBusy)
            Forget();
    }

    /// <summary>The field for a file is made anew, so that the same file can be chosen again.</summary>
    private void Forget()
    {
        (_asked, _share, _turn) = (null, null, _turn + 1);
        _arrival.Dispose();
        _arrival = new CancellationTokenSource();
    }

    private Task RestoreLastAsync() => RunAsync(async () => Words(await Store.Copies.RestoreLastAsync()));

    private Task SalvageAsync() => RunAsync(async () =>
    {
        var report = await Store.Copies.SalvageAsync();
        return [
            T["Salvaged: {0} rigs, {1} pieces of gear. The damaged file is {2} now.",
                report.Contents.Rigs, report.Contents.Gear, report.Aside ?? ""].Value,
            .. report.Lost.Select(lost => T["Lost: {0}", lost].Value),
            .. report.FromBackup.Select(taken => T["From a backup: {0}", taken].Value),
        ];
    });

    private List<string> Words(RestoreReport report)
    {
        List<string> said = [T["Restored: {0} rigs, {1} pieces of gear.", report.Contents.Rigs, report.Contents.Gear].Value];
        if (report.Previous is { } previous)
            said.Add(T["What was kept before is in {0}.", previous].Value);
        return said;
    }

    private async Task RunAsync(Func<Task<List<string>>> work)
    {
        _isBusy = true;
        StateHasChanged();
        try
        {
            _said = await work();
            if (!Store.IsOpen && (await Store.OpenAsync()).Trouble is { } trouble)
                _said.Add(trouble);
            await Restored.InvokeAsync();
        }
        catch (StorageException fault)
        {
            _said = [fault.Message];
        }
        catch (OperationCanceledException)
        {
            _said = [T["Nothing was restored."].Value];
        }
        finally
        {
            _isBusy = false;
            Forget();
            _focusNext = () => _answer; // the list of rigs above may have pushed it out of sight
            _copies = Store.Copies.Kept();
        }
    }
}
