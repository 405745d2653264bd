using System.Collections.Immutable;
using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;
using Loadmark.Files.Entry;
using Loadmark.Files.Forms;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Takes many loads or supplies at once.</summary>
public sealed partial class EntryBox : ComponentBase
{
    private const int MostShown = 60;
    private const int LongestShown = 60;

    private string _text = "";
    private bool _isTable;
    private EntryResult? _reading;
    private string? _added;

    /// <summary>What gear of this kind is called elsewhere in the store, so that no proposed tag is another's.</summary>
    private volatile IReadOnlySet<string> _elsewhere = new HashSet<string>();

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    /// <summary>What the box takes: loads or supplies.</summary>
    [Parameter, EditorRequired] public EntryKind Kind { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;
    [Inject] private Store Store { get; set; } = null!;
    [Inject] private LibraryCache Library { get; set; } = null!;

    private string Id => Kind == EntryKind.Loads ? "enter-loads" : "enter-supplies";

    private string Example => Kind == EntryKind.Loads
        ? "drive-3: 9V DC 12mA centre negative\ndelay-2: 9V 300mA"
        : "brick: INPUT 100-240V~ 50/60Hz\n  1-4: 9 V 150 mA\n  5: 9 V 500 mA; 12 V 400 mA";

    private int Takes => _reading?.Rows.Count(static row => row.Refusal is null) ?? 0;

    private int Refused => _reading?.Rows.Count(static row => row.Refusal is not null) ?? 0;

    private EntryTarget Target => new(Kind, Existing) { Elsewhere = _elsewhere };

    private IReadOnlyCollection<string> Existing => Kind == EntryKind.Loads
        ? [.. View.Rig.Loads.Items.Select(static load => load.Id)]
        : [.. View.Rig.Supplies.Items.Select(static supply => supply.Id)];

    /// <inheritdoc/>
    protected override void OnInitialized() => _ = Task.Run(LookElsewhereAsync);

    /// <summary>Aside, since nothing that is shown waits for it: it is there long before a line is typed to its end.</summary>
    private async Task LookElsewhereAsync()
    {
        try
        {
            _elsewhere = await TagsInStore.OfAsync(Store, Library, Kind == EntryKind.Loads ? GearKind.Load : GearKind.Supply);
        }
        catch (StorageException)
        {
            // Keeping the rig will tell; a proposed tag may then be another's too.
        }
    }

    private static string Short(string text) => text.Length <= LongestShown ? text.Trim() : text[..LongestShown].Trim() + "…";

    private string Says(EntryColumn column) =>
        $"{column.Name ?? $"{column.Index + 1}"} → {(column.Becomes is { } key ? T[GearForm.TitleOf(key)] : T["left out"])}"
        + (column.Because.Length > 0 ? $" ({column.Because})" : "");

    /// <summary>What a line comes to, each figure with where it came from.</summary>
    private string Reads(EntryRow row)
    {
        if (row.Supply is { } supply)
            return T[
                supply.Outlets.Count == 1 ? "{0} outlet: {1}" : "{0} outlets: {1}",
                supply.Outlets.Count,
                string.Join("; ", supply.Outlets.Items.Select(outlet => $"{outlet.Id} {Modes(supply, outlet)}"))];
        if (row.Load is not { } load)
            return "";
        var rating = LoadRating.Of(load);
        List<string> figures =
        [
            FigureWords.Of(FigureWords.Volts($"{rating.Voltage.Value}", rating.Form), rating.Voltage.Origin, T["voltage not known"], T),
            FigureWords.Of(rating.Running?.Value.ToString(), rating.Running?.Origin, T["draw not known"], T),
            FigureWords.Of(T["plug {0}", rating.Plug.Value.Name], rating.Plug.Origin, T["plug not known"], T),
        ];
        if (rating.Form.Value != SupplyForm.Alternating)
            figures.Insert(2, FigureWords.Of(PolarityText.Of(rating.Polarity.Value), rating.Polarity.Origin, T["polarity not known"], T));
        if (!rating.Form.IsKnown)
            figures.Insert(1, T["d.c. or a.c. not known"]);
        return string.Join(", ", figures);
    }

    private static string Modes(Supply supply, Outlet outlet) =>
        string.Join(
            " or ",
            OutletRating.Of(supply, outlet).Modes.Select(
                static mode => $"{FigureDisplay.Printed(mode.Volts)} {FigureDisplay.Printed(mode.Limit?.Value)}"));

    private void Typed()
    {
        (_isTable, _added) = (false, null);
        Read();
    }

    private void Read() => _reading = string.IsNullOrWhiteSpace(_text) ? null
        : _isTable ? LoadTable.Read(_text, Target)
        : LabelLines.Read(_text, Target);

    private async Task OpenFileAsync(InputFileChangeEventArgs chosen)
    {
        _added = null;
        if (await ChosenFile.ReadTextAsync(chosen.File) is { } text)
        {
            (_text, _isTable) = (text, true);
            Read();
        }
        else
        {
            _added = T["{0} is over 1 MiB, or is not a text in UTF-8.", chosen.File.Name];
        }
    }

    private void Clear() => (_text, _reading, _added) = ("", null, null);

    private async Task AddAsync()
    {
        if (_reading is not { } reading)
            return;
        var count = Takes;
        var rig = Kind == EntryKind.Loads
            ? View.Rig with
            {
                Loads = new ValueList<Load>(Put(View.Rig.Loads.Items, reading.Rows.Select(static row => row.Load).OfType<Load>())),
            }
            : reading.Rows.Select(static row => row.Supply).OfType<Supply>().Aggregate(View.Rig, Put);
        var what = Kind == EntryKind.Loads
            ? T[count == 1 ? "adding {0} load" : "adding {0} loads", count]
            : T[count == 1 ? "adding {0} supply" : "adding {0} supplies", count];

        // What cannot be taken stays where it was typed.
        _text = string.Join('\n', reading.Rows.Where(static row => row.Refusal is not null).Select(static row => row.Text));
        _isTable = false;
        _added = T["Done: {0}.", what];
        await View.Session.EditAsync(what, rig);
        Read();
    }

    /// <summary>A supply that replaces another may lack an outlet that something was plugged into.</summary>
    private static Rig Put(Rig rig, Supply supply)
    {
        var index = rig.Supplies.Items.Select(static one => one.Id).ToList().IndexOf(supply.Id);
        return index < 0 ? rig with { Supplies = [.. rig.Supplies, supply] } : rig.PutSupply(index, supply);
    }

    private static ImmutableArray<Load> Put(ImmutableArray<Load> present, IEnumerable<Load> more)
    {
        var all = present.ToList();
        foreach (var load in more)
        {
            var index = all.FindIndex(one => one.Id == load.Id);
            if (index >= 0)
                all[index] = load;
            else
                all.Add(load);
        }

        return [.. all];
    }
}
