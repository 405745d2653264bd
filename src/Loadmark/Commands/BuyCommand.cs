using System.Globalization;
using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Core.Display;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Offers;
using Loadmark.Core.Rigs;
using Loadmark.Files.PriceLists;
using Loadmark.Processes;
using Loadmark.Planning.Buying;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Sources;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Commands;

/// <summary><c>loadmark buy</c>: which supplies should I buy?</summary>
internal sealed class BuyCommand(CommandInput input)
{
    private static readonly OptionSpec Prices = new(
        "prices", OptionKind.Texts, "Your price list: one supply or lead a line (docs/price-list.md).")
    {
        Placeholder = "CSV",
        Needs = "the name of a file",
        IsRequired = true,
    };

    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = QuestionSpecs.Buy.Text,
        Parameters =
        [
            new(
                "RIG",
                "A rig file, or - for one on standard input. Its supplies and leads are used for nothing; feeds with 'pinned: true' stay."),
        ],
        Options = [Prices, .. QuestionSpecs.Buy.Options],
        Needs = "the path of one rig file, and one price list after --prices",
        Json = "One object: status, options with their plans, what was left out and why.",
        Example = "loadmark buy examples/to-buy.rig.yaml --prices examples/harbour-row.prices.csv",
        Documentation = "docs/price-list.md",
        AnswersAtOnce = true,
        Run = static input => new BuyCommand(input).Run(),
    };

    private PriceListResult PricesFrom(string path)
    {
        using var wait = InputWait.ForFile(input.Process, path);
        return PriceListReader.ReadFile(path, input.Process.Patience);
    }

    /// <summary>Reads the rig and the price list, chooses, and answers.</summary>
    private int Run()
    {
        if (input.Words is not [var path] || input.Texts(Prices) is not [var prices])
            return input.Refuse();
        var complaints = input.Complaints;
        var reading = input.Rigs.Read(path);
        var list = PricesFrom(prices);
        if (reading.Rig is not { } rig || list.Offers is not { } offers)
            return complaints.Unreadable(
                [new CheckAnswer(path, null, reading.Errors), new CheckAnswer(prices, null, list.Errors)], input.Json);
        var only = input.Names(QuestionSpecs.Only);
        if (Complaints.AboutOnly(only, rig, StandardInput.NameOf(path)) is { } complaint)
            return complaints.Unusable(complaint);

        if (ReservedLoads.Read(input.Texts(QuestionSpecs.Room), out var vague) is not { } room)
            return complaints.Unusable($"--room: {vague}");

        var interruption = input.Process.Interruption();
        var result = Buy(rig, offers, room, only, interruption);
        if (input.Json)
            BuyJson.Write(input.Process.Output, result);
        else
            SheetPrinter.Print(input.Process, sheet => BuyPage.Write(sheet, result, input.Has(QuestionSpecs.All)));
        if (interruption.IsCancellationRequested)
            return ExitCode.Interrupted;
        return result.Front.Count > 0 ? ExitCode.Fine : ExitCode.Refused;
    }

    private BuyResult Buy(
        Rig rig, IReadOnlyList<Offer> offers, ValueList<Nameplate> room, IReadOnlyCollection<string> only, CancellationToken interruption)
    {
        using var talk = new ProgressNotice<BuyProgress>(input.Process, WordsOf);
        var options =
            new BuyOptions
            {
                ReservedLoads = room,
                Only = only.Count == 0 ? null : only.ToHashSet(StringComparer.Ordinal),
                AcrossBoards = input.Has(QuestionSpecs.AcrossBoards),
                Progress = talk,
            };
        return SupplyBuyer.Buy(rig, offers, options, interruption);
    }

    private static string WordsOf(BuyProgress at)
    {
        var found = at switch
        {
            { IsForQuiet: true } => string.Create(
                CultureInfo.InvariantCulture, $"nothing that costs less than {FigureDisplay.Price(at.LeastPrice)} is quiet."),
            { Planned: { } planned } => string.Create(CultureInfo.InvariantCulture, $"{planned} of {at.Found} options are wired."),
            { Found: 0 } => string.Create(
                CultureInfo.InvariantCulture, $"nothing that costs less than {FigureDisplay.Price(at.LeastPrice)} feeds every load."),
            _ => string.Create(
                CultureInfo.InvariantCulture, $"{at.Found} options below {FigureDisplay.Price(at.LeastPrice)}, looking at dearer ones."),
        };
        return found + " Ctrl-C shows the best so far.";
    }
}
