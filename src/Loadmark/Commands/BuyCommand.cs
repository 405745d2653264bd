using Loadmark.Answers;
using Loadmark.Core.Nameplates;
using Loadmark.Files;
using Loadmark.Files.PriceLists;
using Loadmark.Hosting;
using Loadmark.Planning.Buying;
using Loadmark.Sheets;
using Loadmark.Sources;

namespace Loadmark.Commands;

/// <summary><c>loadmark buy</c>: which supplies should I buy?</summary>
internal sealed class BuyCommand(Surroundings around, IRigSource source)
{
    /// <summary>Reads the rig and the price list, chooses, and answers.</summary>
    public int Run(Request.Buy request)
    {
        var reading = source.Read(request.Rig);
        var list = PriceListReader.ReadFile(request.Prices);
        if (reading.Rig is not { } rig || list.Offers is not { } offers)
            return Refuse(request, reading.Errors, list.Errors);
        if (request.Only.FirstOrDefault(name => !rig.Supplies.Items.Any(supply => supply.Id == name)) is { } stranger)
            return Complain($"--only: there is no supply '{stranger}' in {request.Rig}.");

        var room = new List<Nameplate>();
        foreach (var text in request.Room)
        {
            var plate = NameplateReader.Read(text);
            if (!plate.Modes.Any(static mode => mode is { Volts: not null, Amps: not null }))
                return Complain($"--room: '{text}' does not tell a voltage and a current, such as \"9 V 300 mA\".");
            room.Add(plate);
        }

        var options = new BuyOptions { Room = [.. room], Only = request.Only.Count == 0 ? null : request.Only.ToHashSet(StringComparer.Ordinal) };
        var interruption = around.Interruption();
        var result = SupplyBuyer.Buy(rig, offers, options, interruption);
        if (request.Json)
            BuyJson.Write(around.Output, result);
        else
            Print(result, request.All);
        if (interruption.IsCancellationRequested)
            return ExitCode.Interrupted;
        return result.Front.Count > 0 ? ExitCode.Fine : ExitCode.Refused;
    }

    private int Refuse(Request.Buy request, IReadOnlyList<FileError> ofRig, IReadOnlyList<FileError> ofList)
    {
        foreach (var error in ofRig.Concat(ofList))
            around.Error.WriteLine(SafeText.Neutral(error.ToString()));
        if (request.Json)
        {
            var answers = new List<CheckAnswer>();
            if (ofRig.Count > 0)
                answers.Add(new CheckAnswer(request.Rig, null, [.. ofRig]));
            if (ofList.Count > 0)
                answers.Add(new CheckAnswer(request.Prices, null, [.. ofList]));
            CheckJson.Write(around.Output, answers);
        }

        return ExitCode.Unreadable;
    }

    private int Complain(string complaint)
    {
        around.Error.WriteLine($"loadmark: {SafeText.Neutral(complaint)}");
        return ExitCode.Unreadable;
    }

    private void Print(BuyResult result, bool all)
    {
        var sheet = new Sheet(around.Width, around.Unicode, around.Colour);
        BuyPage.Write(sheet, result, all);
        SheetPrinter.Print(sheet, around);
    }
}
