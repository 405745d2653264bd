using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Files.Readings;
using Loadmark.Questions;
using Loadmark.Web.Problems;
using Loadmark.Workshop.Accepting;

namespace Loadmark.Api.Questions;

/// <summary>Was it built as drawn?</summary>
internal sealed class AcceptQuestion : IQuestion
{
    private static readonly BodyMember Rig = new("rig", "The rig file's text.");

    private static readonly BodyMember Readings = new(
        "readings", "What was measured, as a table or typed lines (docs/acceptance.md); empty for what is to be measured.");

    private static readonly BodyShape Asked = new("RigAndReadings", "A rig and what was measured on it.", [Rig, Readings]);

    /// <inheritdoc/>
    public ApiOperation Operation { get; } = new()
    {
        Name = QuestionSpecs.Accept.Name,
        Group = "Questions",
        Summary = QuestionSpecs.Accept.Sentence,
        About = "The body holds two texts: the rig's file and what was measured. Nothing is kept.",
        Options = [ApiOptions.File],
        Bodies = [ApiContent.Of(Asked, "accept.request.json")],
        Answers = [ApiContent.Of(AcceptJson.Answer, "accept.json")],
        Refusals = [ProblemKind.Unreadable, ProblemKind.Store],
    };

    /// <inheritdoc/>
    public PreparedQuestion Prepare(ApiRequest request)
    {
        if (BodyObject.Read(request.Body, Asked, out var refusal) is not { } body)
            return refusal;
        if (body.Text(Rig, out refusal) is not { } rigText || body.Text(Readings, out refusal) is not { } readings)
            return refusal;
        if (request.ReadRig(rigText, out refusal) is not { } reading)
            return refusal;
        if (reading.Rig is not { } rig)
            return UnreadableProblem.Of(reading.Errors, []);

        // The readings name plugs of the rig, so that they are read with it at hand; that is quick beside the circuit.
        var measured = ReadingsReader.Read(readings, "", RigPlugs.Of(rig));
        if (measured.Session is not { } session)
            return UnreadableProblem.OfReadings(measured.Errors);
        return new Computation((_, cancellation) =>
        {
            var result = AcceptanceJudge.Judge(AcceptancePlan.Of(rig, cancellation), session);
            return AnswerBytes.Of(output => AcceptJson.Write(output, result));
        });
    }
}
