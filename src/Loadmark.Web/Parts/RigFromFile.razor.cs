using System.Collections.Immutable;
using Loadmark.Codes.Packing;
using Loadmark.Codes.Scans;
using Loadmark.Drawing.Texts;
using Loadmark.Files;
using Loadmark.Files.Errors;
using Loadmark.Storage;
using Loadmark.Storage.Rigs;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.Restoring;
using Loadmark.Workshop.Solves;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Takes rig files, and pictures of sheets, which give their rig files back. Codes are gathered over several choices.</summary>
public sealed partial class RigFromFile : ComponentBase, IDisposable
{
    /// <summary>The most files that are taken at once: one a code, and some that were taken twice.</summary>
    private const int MostFiles = 2 * TextCodes.MostParts;

    private readonly List<(string Title, ImmutableArray<FileError> Errors)> _unread = [];
    private readonly List<string> _said = [];
    private readonly List<StoredRig> _kept = [];
    private GatheredCodes _codes = new();
    private CancellationTokenSource _stop = new();
    private bool _isBusy;
    private string _at = "";
    private int _turn;

    /// <summary>Told when several rigs were kept; one alone is opened.</summary>
    [Parameter] public EventCallback Kept { get; set; }

    [Inject] private RigStore Store { get; set; } = null!;
    [Inject] private LibraryCache Cache { get; set; } = null!;
    [Inject] private SolveGate Gate { get; set; } = null!;
    [Inject] private NavigationManager Address { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <summary>Whether some codes of a rig file were found and others are still to come.</summary>
    private bool IsPartly => _codes.Texts() is [{ IsWhole: false }];

    /// <inheritdoc/>
    public void Dispose()
    {
        _stop.Cancel();
        _stop.Dispose();
    }

    private void Stop() => _stop.Cancel();

    private void Forget()
    {
        _codes = new GatheredCodes();
        _said.Clear();
    }

    private async Task TakeAsync(InputFileChangeEventArgs chosen)
    {
        _unread.Clear();
        _said.Clear();
        _kept.Clear();
        if (chosen.FileCount > MostFiles)
        {
            _said.Add(T["These are {0} files. At most {1} are taken at once.", chosen.FileCount, MostFiles]);
            return;
        }

        (_isBusy, var hasScans) = (true, false);
        try
        {
            foreach (var file in chosen.GetMultipleFiles(MostFiles))
                hasScans |= await TakeAsync(file);
            if (hasScans)
                await RestoreAsync();
        }
        catch (OperationCanceledException)
        {
            _said.Add(T["Stopped."]);
        }
        finally
        {
            // The field for files is made anew, so that the same file can be chosen again.
            (_isBusy, _turn) = (false, _turn + 1);
            _stop.Dispose();
            _stop = new CancellationTokenSource();
        }

        if (_kept is [var only] && _unread.Count == 0 && _said.Count == 0)
        {
            Address.NavigateTo($"rig/{only.Id}");
        }
        else if (_kept.Count > 0)
        {
            _said.InsertRange(0, _kept.Select(rig => T["{0} is kept.", rig.Name].Value));
            await Kept.InvokeAsync();
        }
    }

    /// <summary>Takes one file; true where it is one that codes were looked for in.</summary>
    private async Task<bool> TakeAsync(IBrowserFile file)
    {
        _at = SafeText.Clean(file.Name);
        if (file.Size > ScanReader.MostBytes)
        {
            _said.Add($"{_at}: {ScanReader.TooLarge}");
            return false;
        }

        StateHasChanged();
        var bytes = await ChosenFile.ReadBytesAsync(file, ScanReader.MostBytes, _stop.Token);
        if (!ScanReader.IsScan(bytes))
        {
            await ImportAsync(file.Name, bytes);
            return false;
        }

        // The page looks at its codes while others are being found, so what is found goes elsewhere first.
        var found = _codes.Copy();
        var trouble = await Gate.RunAsync(stop => ScanReader.Read(bytes, found, cancellation: stop), _stop.Token);
        _codes = found;
        if (trouble is not null)
            _said.Add($"{_at}: {trouble}");
        return trouble is null;
    }

    private async Task ImportAsync(string name, byte[] bytes)
    {
        if (ChosenFile.TextOf(bytes, RigFileReader.MostBytes) is not { } text)
        {
            Refuse(name, [new FileError("", 1, 1, T["the file is over 1 MiB, or is not a text in UTF-8, and it is no PDF, PNG or JPEG that "
                + "may show a sheet"].Value)]);
            return;
        }

        var reading = RigFileReader.Read(text, name, await Cache.NowAsync());
        if (reading.Rig is { } rig)
            _kept.Add(await Store.AddAsync(rig.Name, text));
        else
            Refuse(name, reading.Errors);
    }

    private void Refuse(string name, ImmutableArray<FileError> errors) =>
        _unread.Add((T["{0} is not a rig file that can be read", SafeText.Clean(name)], errors));

    /// <summary>Keeps the rig file where all of its codes were found; else says what is missing, and waits for more pictures.</summary>
    private async Task RestoreAsync()
    {
        var restored = RestoredSheet.Of(_codes, "", await Cache.NowAsync());
        if (restored.Remark.Length > 0)
            _said.Add(restored.Remark);
        if (restored.Text is { } text)
        {
            _kept.Add(await Store.AddAsync(restored.Reading?.Rig?.Name ?? T["Restored from a sheet"].Value, text));
            if (restored.Reading is { Rig: null } unread)
                _unread.Add((T["The rig file is restored and kept as it was, but this version of Loadmark cannot read it"], unread.Errors));
        }
        else
        {
            _said.Add(restored.Complaint!);
        }

        if (IsPartly)
            _said.Add(T["What was found is kept until you leave this page: add the other pictures."]);
        else
            _codes = new GatheredCodes();
    }
}
