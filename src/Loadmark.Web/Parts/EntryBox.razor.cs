using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;
using Loadmark.Files.Entry;
using Loadmark.Files.Forms;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.TypedInput;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Takes many loads or supplies at once.</summary>
public sealed partial class EntryBox : ComponentBase
{
    private readonly EntryDraft _draft = new();
    private Rig? _seen;
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

    private string AddText => (_draft.Takes, Kind) switch
    {
        (0, _) => T["Add"],
        (var count, EntryKind.Loads) => T[count == 1 ? "Add {0} load" : "Add {0} loads", count],
        var (count, _) => T[count == 1 ? "Add {0} supply" : "Add {0} supplies", count],
    };

    private EntryTarget Target => new(Kind, Existing) { Elsewhere = _elsewhere };

    private IReadOnlyCollection<string> Existing => Kind == EntryKind.Loads
        ? [.. View.Rig.Loads.Items.Select(static load => load.Id)]
        : [.. View.Rig.Supplies.Items.Select(static supply => supply.Id)];

    /// <inheritdoc/>
    protected override void OnInitialized() => _ = Task.Run(LookElsewhereAsync);

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        // What a line comes to depends on what is there already, which an undo or another window may change.
        if (ReferenceEquals(_seen, View.Rig))
            return;
        _seen = View.Rig;
        _draft.ReadAgain(Target);
    }

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

    private string Says(EntryColumn column) =>
        $"{column.Name ?? $"{column.Index + 1}"} → {(column.Becomes is { } key ? T[GearForm.TitleOf(key)] : T["left out"])}"
        + (column.Because.Length > 0 ? $" ({column.Because})" : "");

    private void Typed(string text)
    {
        _added = null;
        _draft.Type(text, Target);
    }

    private async Task OpenFileAsync(InputFileChangeEventArgs chosen)
    {
        _added = null;
        if (await ChosenFile.ReadTextAsync(chosen.File) is { } text)
        {
            _draft.Open(text, Target);
        }
        else
        {
            _added = T["{0} is over 1 MiB, or is not a text in UTF-8.", chosen.File.Name];
        }
    }

    private void Clear() => Typed("");

    private async Task AddAsync()
    {
        var (count, rows) = (_draft.Takes, _draft.Rows);
        if (count == 0)
            return;
        var rig = Kind == EntryKind.Loads
            ? View.Rig with { Loads = new ValueList<Load>(Put(View.Rig.Loads.Items, rows.Select(static row => row.Load).OfType<Load>())) }
            : rows.Select(static row => row.Supply).OfType<Supply>().Aggregate(View.Rig, Put);
        var what = Kind == EntryKind.Loads
            ? T[count == 1 ? "adding {0} load" : "adding {0} loads", count]
            : T[count == 1 ? "adding {0} supply" : "adding {0} supplies", count];

        // What cannot be taken stays where it was typed.
        _draft.Leave(static _ => true, Target);
        _added = T["Done: {0}.", what];
        await View.Session.EditAsync(what, rig);
        _draft.ReadAgain(Target);
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
