using System.Collections.Immutable;
using System.Globalization;
using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Rigs;
using Loadmark.Web.Texts;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.Sessions;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Pages;

/// <summary>The rigs that are kept, and the ways to begin.</summary>
public sealed partial class RigsPage : ComponentBase
{
    /// <summary>How many of the rigs changed last are judged for the list.</summary>
    private const int MostJudged = 50;

    private readonly Dictionary<Guid, (Severity Severity, string Sentence)?> _verdicts = [];
    private ImmutableArray<RigSummary>? _rigs;
    private string _name = "";
    private string _find = "";
    private RigSummary? _removed;

    [Inject] private Store Whole { get; set; } = null!;
    [Inject] private RigStore Store { get; set; } = null!;
    [Inject] private LibraryCache Cache { get; set; } = null!;
    [Inject] private StoreOpening Opening { get; set; } = null!;
    [Inject] private NavigationManager Address { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;
    [Inject] private TimeProvider Clock { get; set; } = null!;

    private IEnumerable<RigSummary> Shown =>
        (_rigs ?? []).Where(rig => rig.Name.Contains(_find.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        if (Whole.IsOpen)
            await LoadAsync();
    }

    private async Task LoadAsync()
    {
        _rigs = await Store.ListAsync();
        var library = await Cache.NowAsync();
        StateHasChanged();
        foreach (var rig in _rigs.Value.Take(MostJudged))
        {
            var text = (await Store.FindAsync(rig.Id))?.Text;
            _verdicts[rig.Id] = text is not null && RigFileReader.Read(text, "", library).Rig is { } read
                ? Verdict(RigSession.Judge(read))
                : null;
            StateHasChanged();
        }
    }

    private static (Severity Severity, string Sentence) Verdict(CheckResult check) => (check.Verdict, VerdictSentence.Of(check));

    private async Task NewAsync()
    {
        var name = string.IsNullOrWhiteSpace(_name) ? T["Untitled rig"].Value : _name.Trim();
        var rig = await Store.AddAsync(name, RigFileWriter.Write(new Rig { Name = name }));
        Address.NavigateTo($"rig/{rig.Id}/gear");
    }

    private async Task DuplicateAsync(RigSummary rig)
    {
        if (await Store.FindAsync(rig.Id) is not { } kept)
            return;
        var name = string.Format(CultureInfo.CurrentCulture, T["{0}, copy"].Value, kept.Name);
        var text = RigFileReader.Read(kept.Text, "", await Cache.NowAsync()).Rig is { } read
            ? RigFileEditor.Update(kept.Text, read with { Name = name }).Text
            : kept.Text;
        await Store.AddAsync(name, text);
        await LoadAsync();
    }

    private async Task RemoveAsync(RigSummary rig)
    {
        await Store.RemoveAsync(rig.Id, rig.Revision);
        _removed = rig;
        await LoadAsync();
    }

    private async Task RestoreAsync()
    {
        if (_removed is { } rig)
            await Store.RestoreAsync(rig.Id);
        _removed = null;
        await LoadAsync();
    }

    private string Ago(DateTimeOffset when)
    {
        var past = Clock.GetUtcNow() - when;
        return past switch
        {
            { TotalMinutes: < 2 } => T["just now"].Value,
            { TotalHours: < 1 } => T["{0} min ago", (int)past.TotalMinutes].Value,
            { TotalHours: < 24 } => T["{0} h ago", (int)past.TotalHours].Value,
            _ => T["on {0}", when.ToLocalTime().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)].Value,
        };
    }
}
