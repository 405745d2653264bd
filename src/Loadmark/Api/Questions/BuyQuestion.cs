using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Files.PriceLists;
using Loadmark.Planning.Buying;
using Loadmark.Questions;
using Loadmark.Web.Problems;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Api.Questions;

/// <summary>Which supplies should I buy?</summary>
internal sealed class BuyQuestion : IQuestion
{
    private static readonly BodyMember Rig = new("rig", "The rig file's text.");

    private static readonly BodyMember Prices = new(
        "prices", "The price list's text: CSV, one supply or lead a line (docs/price-list.md).");

    private static readonly BodyShape Asked = new("RigAndPrices", "A rig and a price list.", [Rig, Prices]);

    /// <inheritdoc/>
    public ApiOperation Operation { get; } = new()
    {
        Name = QuestionSpecs.Buy.Name,
        Group = "Questions",
        Summary = QuestionSpecs.Buy.Sentence,
        About = "The body holds two texts: the rig's file and the price list (CSV). Prices are in the money of the list.",
        Options = [.. QuestionSpecs.Buy.EveryOption, ApiOptions.File],
        Bodies = [ApiContent.Of(Asked, "buy.request.json")],
        Answers = [ApiContent.Of(BuyJson.Purchases, "buy.json")],
        Streams = true,
        Refusals = [ProblemKind.Unreadable, ProblemKind.Store],
    };

    /// <inheritdoc/>
    public PreparedQuestion Prepare(ApiRequest request)
    {
        if (BodyObject.Read(request.Body, Asked, out var refusal) is not { } body)
            return refusal;
        if (body.Text(Rig, out refusal) is not { } rigText || body.Text(Prices, out refusal) is not { } prices)
            return refusal;
        if (request.ReadRig(rigText, out refusal) is not { } reading)
            return refusal;
        var list = PriceListReader.Read(prices, "");
        if (reading.Rig is not { } rig || list.Offers is not { } offers)
            return UnreadableProblem.Of(reading.Errors, list.Errors);
        if (OnlySupplies.Of(request, rig, out refusal) is var only && refusal is not null)
            return refusal;
        if (ReservedLoads.Read(request.Options.Texts(QuestionSpecs.Room), out var vague) is not { } room)
            return new Problem(ProblemKind.BadRequest, $"room: {vague}");
        return new Computation((progress, cancellation) =>
        {
            var result = SupplyBuyer.Buy(
                rig, offers, new BuyOptions
                {
                    ReservedLoads = room,
                    Only = only,
                    AcrossBoards = request.Options.Has(QuestionSpecs.AcrossBoards),
                    Progress = progress,
                }, cancellation);
            return AnswerBytes.Of(output => BuyJson.Write(output, result));
        });
    }
}
