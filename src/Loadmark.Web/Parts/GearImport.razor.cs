using Loadmark.Files.Library;
using Loadmark.Storage.Faults;
using Loadmark.Web.Texts;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>
/// What a file would do to the library, before anything is done: nothing that is there is changed unless somebody says so.
/// </summary>
public sealed partial class GearImport : ComponentBase
{
    private const int MostShown = 100;

    private readonly HashSet<ImportRow> _taken = new(ReferenceEqualityComparer.Instance);
    private ImportPreview _preview = new([]);
    private string? _said;
    private string? _trouble;
    private bool _isBusy;

    /// <summary>The file's name.</summary>
    [Parameter, EditorRequired] public string Name { get; set; } = "";

    /// <summary>What was read.</summary>
    [Parameter, EditorRequired] public GearFileResult Reading { get; set; } = null!;

    /// <summary>The library when the file was chosen.</summary>
    [Parameter, EditorRequired] public GearSnapshot Library { get; set; } = null!;

    /// <summary>Told when the import is done with.</summary>
    [Parameter] public EventCallback OnClose { get; set; }

    [Inject] private LibraryEditor Editor { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnInitialized() => _preview = ImportPreview.Of(Library, Reading);

    private int Count(ImportState state) => _preview.Rows.Count(row => row.State == state);

    private void Toggle(ImportRow row)
    {
        if (!_taken.Remove(row))
            _taken.Add(row);
    }

    private void ToggleAll()
    {
        var all = _taken.Count == Count(ImportState.Differs);
        _taken.Clear();
        if (!all)
            _taken.UnionWith(_preview.Rows.Where(static row => row.State == ImportState.Differs));
    }

    private async Task TakeAsync()
    {
        _isBusy = true;
        try
        {
            var result = await Editor.TakeAsync(_preview, _taken.Contains, T["imported from {0}", Name]);
            _said = T[
                "{0} added, {1} changed, {2} left as they are, {3} not taken because they were changed meanwhile.",
                result.Added.Length,
                result.Changed.Length,
                result.Left.Length,
                result.Overtaken.Length];
            _trouble = null;
        }
        catch (Exception fault) when (fault is StorageException or ArgumentException)
        {
            _trouble = fault.Message;
        }

        _isBusy = false;
    }
}
