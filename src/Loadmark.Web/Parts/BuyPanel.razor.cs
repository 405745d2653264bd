using System.Collections.Immutable;
using Loadmark.Core.Display;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Offers;
using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;
using Loadmark.Drawing.Plots;
using Loadmark.Drawing.Scenes;
using Loadmark.Files.Errors;
using Loadmark.Files.PriceLists;
using Loadmark.Planning.Buying;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Sessions;
using Loadmark.Workshop.Solves;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Buying from the page.</summary>
public sealed partial class BuyPanel : ComponentBase, IDisposable
{
    private SolveJob<BuyResult, BuyProgress> _job = null!;
    private string _name = "";
    private ValueList<Offer>? _offers;
    private ImmutableArray<FileError> _faults = [];
    private string _reserved = "";
    private string? _reservedFault;
    private bool? _acrossBoards;
    private int? _chosen;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    [Inject] private SolveGate Gate { get; set; } = null!;
    [Inject] private TimeProvider Clock { get; set; } = null!;
    [Inject] private PageLimits Limits { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <summary>Whether supplies of one board may feed loads of another: as chosen here, else as the plan that fell short had it.</summary>
    private bool AcrossBoards
    {
        get => _acrossBoards ?? View.Shortage?.AcrossBoards is true;
        set => _acrossBoards = value;
    }

    /// <inheritdoc/>
    public void Dispose() => _job.Dispose();

    /// <inheritdoc/>
    protected override void OnInitialized() =>
        _job = new SolveJob<BuyResult, BuyProgress>(Gate, () => _ = InvokeAsync(StateHasChanged), Clock);

    private string OfferCount(ValueList<Offer> offers)
    {
        var leads = offers.Items.OfType<LeadOffer>().Count();
        return leads == 0
            ? T["{0}: {1} supplies.", _name, offers.Count]
            : T["{0}: supplies {1}, leads {2}.", _name, offers.Count - leads, leads];
    }

    private string Shopping(BuyOption option) => option.Purchases.Count == 0
        ? T["nothing: what is here suffices"]
        : string.Join(
            ", ",
            option.Purchases.Items.Select(
                static purchase => purchase.Count == 1 ? purchase.Offer.Id : $"{purchase.Count} × {purchase.Offer.Id}"));

    /// <summary>The options that stand out among those listed, and how far that is proven.</summary>
    private IEnumerable<string> Firsts(BuyResult result)
    {
        var isProven = result.Status == BuyStatus.Optimal;
        yield return T[isProven ? "Cheapest of all, proven: {0}" : "Cheapest of those found: {0}", Shopping(result.Cheapest!)];
        yield return result.QuietStatus switch
        {
            BuyStatus.Optimal => T["Cheapest of all that is quiet, proven: {0}, {1}", Shopping(result.CheapestQuiet!), PriceOf(result)],
            BuyStatus.Feasible => T["Cheapest of those found that is quiet: {0}, {1}", Shopping(result.CheapestQuiet!), PriceOf(result)],
            BuyStatus.Infeasible => T["No combination on the list is quiet: proven, as far as the list tells."],
            _ => T["None that is quiet was found in the time."],
        };
        yield return T["Fewest boxes of those listed: {0}", Shopping(result.FewestBoxes!)];
        if (result.Lightest is { } lightest)
            yield return T["Lightest of those listed: {0}", Shopping(lightest)];
    }

    private static string PriceOf(BuyResult result) => FigureDisplay.Price(result.CheapestQuiet!.Price);

    private string Says(BuyProgress? at) => at switch
    {
        null => T["Looking for the cheapest."],
        { IsForQuiet: true } => T["Nothing that costs less than {0} is quiet.", FigureDisplay.Price(at.LeastPrice)],
        { Planned: { } planned } => T["{0} of {1} options are wired.", planned, at.Found],
        { Found: 0 } => T["Nothing that costs less than {0} feeds every load.", FigureDisplay.Price(at.LeastPrice)],
        _ => T["{0} options below {1}, looking at dearer ones.", at.Found, FigureDisplay.Price(at.LeastPrice)],
    };

    private string Says(BuyResult result) => result.Status switch
    {
        BuyStatus.Optimal when result.Cheapest is { Purchases.Count: 0 } =>
            T["Nothing need be bought: the supplies there are feed every load."],
        BuyStatus.Optimal => T["Every load can be fed, and nothing cheaper on the list can do it: proven, as far as the list tells."],
        BuyStatus.Feasible => T["Every load can be fed. Whether it can be done for less was not proven in the time."],
        BuyStatus.Infeasible => T["Nothing on the list feeds every load: proven, as far as the list tells."],
        _ => T["Nothing that feeds every load was found in the time."],
    };

    private Scene FrontPlot(BuyResult result, int width) => PlotDrawing.Draw(new Plot
    {
        Title = T["What more money buys"],
        X = new PlotAxis(T["price"], "") { TakesPrefix = false, FromZero = false },
        Y = new PlotAxis(T["to spare"], "W") { TakesPrefix = false },
        Width = width,
        Height = 260,
        Spots = [.. result.Options.Items.Select((option, index) => new PlotSpot(
            $"{index + 1}", (double)option.Price, (double)option.Spare.Value, (double)(option.MassGrams ?? 0),
            IsOnFront: result.Front.Items.Contains(option)))],
    });

    private async Task OpenAsync(InputFileChangeEventArgs chosen)
    {
        var text = await ChosenFile.ReadTextAsync(chosen.File);
        Take(chosen.File.Name, text ?? "");
        if (text is null)
            _faults = [new FileError("", 1, 1, T["the file is over 1 MiB, or is not a text in UTF-8"].Value)];
    }

    private void TakeExample() => Take(T["The example list"].Value, ExamplePrices.Text);

    private void Take(string name, string text)
    {
        var reading = PriceListReader.Read(text, name);
        (_name, _offers, _faults) = (name, reading.Offers, reading.Errors);
        _job.Clear();
    }

    private async Task BuyAsync()
    {
        var reserved = _reserved.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(NameplateReader.Read)
            .ToList();
        _reservedFault = reserved.Find(
            static plate => !plate.Modes.Any(static mode => mode is { Volts: not null, Amps: not null })) is { } vague
            ? T["“{0}” does not tell a voltage and a current, such as 9 V 300 mA.", vague.Text].Value
            : null;
        if (_reservedFault is not null || _offers is not { } offers)
            return;
        _chosen = null;
        View.Show((RigPreview?)null);
        var rig = View.Rig;
        var options = new BuyOptions
        {
            ReservedLoads = [.. reserved],
            Only = View.Shortage?.Only,
            AcrossBoards = AcrossBoards,
            Progress = _job,
            TimeLimit = Limits.SolveTime,
        };
        await _job.RunAsync(stop => SupplyBuyer.Buy(rig, offers, options, stop));

        // The options show a moment before this: whoever has opened one by then keeps it open.
        if (_chosen is null && _job is { IsRunning: false, Answer.Front.Count: > 0 })
            Choose(0);
    }

    private void Choose(int number)
    {
        _chosen = _chosen == number ? null : number;
        View.Show(_chosen is { } chosen && _job.Answer is { } answer ? PreviewOf(answer.Options[chosen]) : null);
    }

    private async Task TakeAsync(BuyOption option)
    {
        var preview = PreviewOf(option);
        View.Show((RigPreview?)null);
        await View.Session.EditAsync(preview.What, preview.Rig);
    }

    /// <summary>The rig with what is bought, and without the loads that room was kept for.</summary>
    private RigPreview PreviewOf(BuyOption option)
    {
        var rig = (_job.Answer?.ReservedLoads ?? []).Items.Aggregate(option.Plan.Rig, static (rig, id) => rig.RemoveLoad(id));
        return new RigPreview(T["putting {0} into the rig", Shopping(option)].Value, rig, RigSession.Judge(rig));
    }
}
