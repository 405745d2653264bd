using System.Globalization;
using Loadmark.Storage;
using Loadmark.Storage.Copies;
using Loadmark.Storage.Faults;
using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Backups on the page, and the ways back; also where what is kept cannot be opened.</summary>
public sealed partial class BackupPart : ComponentBase
{
    private IReadOnlyList<KeptCopy> _copies = [];
    private KeptCopy? _asked;
    private bool _isBusy;
    private List<string> _said = [];

    /// <summary>Whether what is kept cannot be opened because it is damaged, or is none of ours.</summary>
    [Parameter] public bool IsDamaged { get; set; }

    /// <summary>Is told when what is kept has become something else.</summary>
    [Parameter] public EventCallback Restored { get; set; }

    [Inject] private Store Store { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnInitialized() => _copies = Store.Copies.Kept();

    private static string Time(KeptCopy copy) => copy.Made.ToLocalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private string Why(CopyReason reason) => reason switch
    {
        CopyReason.BeforeUpgrade => T["before an upgrade"].Value,
        CopyReason.BeforeRestore => T["before restoring"].Value,
        _ => T["of the day"].Value,
    };

    private Task RestoreAsync(KeptCopy copy) => RunAsync(async () => Words(await Store.Copies.RestoreAsync(copy.File)));

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
        finally
        {
            (_isBusy, _asked) = (false, null);
            _copies = Store.Copies.Kept();
        }
    }
}
