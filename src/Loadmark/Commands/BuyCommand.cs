using System.Globalization;
using Loadmark.Answers;
using Loadmark.Core.Display;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Offers;
using Loadmark.Core.Rigs;
using Loadmark.Files.PriceLists;
using Loadmark.Hosting;
using Loadmark.Planning.Buying;
using Loadmark.Sheets;
using Loadmark.Sources;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Commands;

/// <summary><c>loadmark buy</c>: which supplies should I buy?</summary>
internal sealed class BuyCommand(Surroundings around, IRigSource source)
{
    /// <summary>Reads the rig and the price list, chooses, and answers.</summary>
    public int Run(Request.Buy request)
    {
        var complaints = new Complaints(around);
        var reading = source.Read(request.Rig);
        var list = PriceListReader.ReadFile(request.Prices);
        if (reading.Rig is not { } rig || list.Offers is not { } offers)
            return complaints.Unreadable(
                [new CheckAnswer(request.Rig, null, reading.Errors), new CheckAnswer(request.Prices, null, list.Errors)], request.Json);
        if (Complaints.AboutOnly(request.Only, rig, StandardInput.NameOf(request.Rig)) is { } complaint)
            return complaints.Unusable(complaint);

        if (ReservedLoads.Read(request.Room, out var vague) is not { } room)
            return complaints.Unusable($"--room: {vague}");

        var interruption = around.Interruption();
        var result = Buy(rig, offers, room, request.Only, interruption);
        if (request.Json)
            BuyJson.Write(around.Output, result);
        else
            SheetPrinter.Print(around, sheet => BuyPage.Write(sheet, result, request.All));
        if (interruption.IsCancellationRequested)
            return ExitCode.Interrupted;
        return result.Front.Count > 0 ? ExitCode.Fine : ExitCode.Refused;
    }

    private BuyResult Buy(
        Rig rig, IReadOnlyList<Offer> offers, ValueList<Nameplate> room, IReadOnlyCollection<string> only, CancellationToken interruption)
    {
        using var talk = new ProgressNotice<BuyProgress>(around, WordsOf);
        var options =
            new BuyOptions { ReservedLoads = room, Only = only.Count == 0 ? null : only.ToHashSet(StringComparer.Ordinal), Progress = talk };
        return SupplyBuyer.Buy(rig, offers, options, interruption);
    }

    private static string WordsOf(BuyProgress at)
    {
        var found = at switch
        {
            { Planned: { } planned } => string.Create(CultureInfo.InvariantCulture, $"{planned} of {at.Found} options are wired."),
            { Found: 0 } => string.Create(
                CultureInfo.InvariantCulture, $"nothing that costs less than {FigureDisplay.Price(at.LeastPrice)} feeds every load."),
            _ => string.Create(
                CultureInfo.InvariantCulture, $"{at.Found} options below {FigureDisplay.Price(at.LeastPrice)}, looking at dearer ones."),
        };
        return found + " Ctrl-C shows the best so far.";
    }
}
